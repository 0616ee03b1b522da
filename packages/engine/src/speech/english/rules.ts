import type { Board } from "../../board/board.ts";
import { digitsOf } from "../../board/digits.ts";
import type { Grid } from "../../puzzle/puzzle.ts";
import { capital, counted, digitsSaid, listed } from "./counts.ts";

/** One rule to introduce: all instances that one sentence says. */
export interface RuleIntroduction {
  /** An instance's id where the sentence is its own, else the kind's name. */
  readonly rule: string;
  readonly title: string;
  readonly say: string;
  readonly ids: readonly string[];
  /** The kind's name; none where the grids themselves are introduced. */
  readonly kind?: string;
}

const housesIn = ({ regions, box }: Grid): string =>
  regions ? `row, column and ${box ? "box" : "region"}` : "row and column";

/** What rows, columns and regions hold, grids with the same words together. */
const gridSentences = (board: Board): string[] => {
  const { grids } = board.puzzle;
  const said = new Map<string, Grid[]>();
  for (const grid of grids) {
    const text = `holds ${digitsSaid(digitsOf(grid.digits))} once each`;
    const key = `${housesIn(grid)}|${text}`;
    said.set(key, [...(said.get(key) ?? []), grid]);
  }
  return [...said].map(([key, same]) => {
    const [houses, text] = key.split("|");
    if (grids.length === 1) return `Every ${houses} ${text}.`;
    const where = same.length === grids.length ? "In each grid" : `In ${listed(same.map(({ called }) => called))}`;
    return `${where}, every ${houses} ${text}.`;
  });
};

const sharedSentence = (board: Board): string | undefined => {
  const shared = board.canvas.grids.filter((grids) => grids.length > 1).length;
  if (shared === 0) return undefined;
  return `The grids share ${counted(shared)} ${shared === 1 ? "cell" : "cells"}, and a shared cell obeys both.`;
};

/** Every rule to be introduced, in file order: the grids, then one entry for each sentence of a kind. */
export const introductions = (board: Board): RuleIntroduction[] => {
  const several = board.puzzle.grids.length > 1;
  const entries = new Map<string, RuleIntroduction>();
  for (const { id, kind, instance } of board.rules) {
    const { rule, title } = kind.words(instance);
    const before = entries.get(rule);
    entries.set(rule, {
      rule: before ? kind.name : id,
      title,
      say: rule,
      ids: [...(before?.ids ?? []), id],
      kind: kind.name,
    });
  }
  const grids = [...gridSentences(board), sharedSentence(board)].filter((text) => text !== undefined).join(" ");
  return [
    {
      rule: "grids",
      title: several ? capital(`${counted(board.puzzle.grids.length)} grids`) : "The grid",
      say: grids,
      ids: [],
    },
    ...entries.values(),
  ];
};
