import {
  type Board,
  type Cell,
  type Clash,
  capital,
  counted,
  listed,
  nounsFor,
  type Soundness,
  type Worths,
} from "@solvewright/engine";
import { printable } from "../../printable.ts";
import type { Finding } from "./finding.ts";

/** A thing of the file by its id, and what it is. */
type Item = readonly [id: string, what: string];

const ruleItem =
  (board: Board) =>
  (id: string): Item => [id, nounsFor(board, "placed").rule(id)];

const givenItem =
  ({ canvas, givens }: Board) =>
  (cell: Cell): Item => [canvas.names[cell]!, `the given ${givens.get(cell)}`];

const houseItem =
  (board: Board) =>
  (id: string): Item => [id, nounsFor(board, "placed").house(id)];

const listing = (items: readonly Item[]): string[] => {
  const width = Math.max(...items.map(([id]) => id.length));
  return items.map(([id, what]) => printable(`  ${id.padEnd(width)}  ${what}`));
};

const redundant = <K>(worths: ReadonlyMap<K, string>): K[] =>
  [...worths].filter(([, worth]) => worth === "redundant").map(([key]) => key);

const whatIsNeeded = (board: Board, { rules, givens }: Worths): string[] => {
  const spare = [...redundant(rules).map(ruleItem(board)), ...redundant(givens).map(givenItem(board))];
  const all = rules.size + givens.size;
  const both = [...(rules.size > 0 ? ["rule"] : []), ...(givens.size > 0 ? ["given"] : [])];
  if (all === 0) return [];
  if (spare.length === 0) return [`Every ${both.join(" and every ")} is needed.`];
  const nouns = listed(both.map((noun) => `${noun}s`));
  const head = `${capital(counted(spare.length))} of its ${counted(all)} ${nouns} could ${spare.length === 1 ? "go" : "each go by itself"} and leave exactly one solution:`;
  return [head, ...listing(spare)];
};

const mostListed = 12;

const whereTheyDiffer = ({ canvas }: Board, { solutions: [one, other], differ }: Soundness): string[] => {
  const count = differ.length;
  const shown = differ.slice(0, mostListed);
  return [
    `More than one. These two agree everywhere but in ${counted(count)} ${count === 1 ? "cell" : "cells"}.`,
    ...listing(shown.map((cell) => [canvas.names[cell]!, `${one![cell]} or ${other![cell]}`])),
    ...(count > shown.length ? [`  and ${counted(count - shown.length)} more`] : []),
  ];
};

const whatClashes = (board: Board, { houses, rules, givens, minimal }: Clash): string[] => [
  "None. These can't all hold:",
  ...listing([...rules.map(ruleItem(board)), ...houses.map(houseItem(board)), ...givens.map(givenItem(board))]),
  minimal
    ? "Without any one of them the others can."
    : "Fewer of them may clash already; that would take too long to find out.",
];

const verdictSaid = (board: Board, soundness: Soundness): string[] => {
  if (soundness.verdict === "one") return ["One. Exactly one solution."];
  return soundness.verdict === "several" ? whereTheyDiffer(board, soundness) : ["None. It has no solution."];
};

const leftOutSaid = (board: Board): string[] => {
  const items = board.rules.filter(({ leftOut }) => leftOut).map(({ id }) => ruleItem(board)(id));
  return items.length === 0 ? [] : ["This leaves out what the file only describes:", ...listing(items)];
};

/** A finding in plain words, the verdict first. */
export const inWords = (board: Board, { soundness, worths, clash, isStopped }: Finding): string[] => {
  if (!soundness) return ["Stopped. No verdict yet."];
  return [
    ...(clash ? whatClashes(board, clash) : verdictSaid(board, soundness)),
    ...(worths ? whatIsNeeded(board, worths) : []),
    ...leftOutSaid(board),
    ...(isStopped ? ["Stopped before the reasons were known."] : []),
  ];
};
