import { compile, kinds } from "@solvewright/engine";
import { boardSvg } from "@solvewright/press";
import { cases } from "../../packages/engine/test-kit/kind-files.ts";
import { puzzleOf } from "../../packages/engine/test-kit/puzzles.ts";

/** A kind of rule as the documentation shows it. */
export interface ShownKind {
  readonly name: string;
  readonly title: string;
  readonly form: string;
  readonly sentence: string;
  /** The lines of the example's file that bring the rule. */
  readonly source: string;
  readonly pictures: { readonly clue: string; readonly obeys: string; readonly breaks: string };
}

/** Cell name to digit, from the rows of a filling. */
const digitsIn = (names: readonly string[], filling: string): Record<string, number> => {
  const digits = filling
    .trim()
    .split("\n")
    .flatMap((line) => (/\s/.test(line.trim()) ? line.trim().split(/\s+/) : [...line.trim()]))
    .map(Number);
  return Object.fromEntries(names.map((name, k) => [name, digits[k]!]));
};

/** Pixels that a cell takes, so that a grid of nine is no wider than one of six. */
const cellSize = (rows: number): number => (rows > 6 ? 24 : 36);

const shownKind = (name: string, form: string): ShownKind => {
  const { example } = cases.get(name)!;
  const board = compile(puzzleOf(example.puzzle));
  const { kind, instance } = board.rules.find((rule) => rule.kind.name === name)!;
  const { title, rule } = kind.words(instance);
  const picture = (label: string, filling?: string): string =>
    `${boardSvg(board, {
      cell: cellSize(board.canvas.rows),
      painted: true,
      ground: "page",
      label,
      ...(filling ? { written: { settled: digitsIn(board.canvas.names, filling) } } : {}),
    })}\n`;
  return {
    name,
    title,
    form,
    sentence: rule,
    source: example.puzzle.slice(example.puzzle.indexOf("rules:")).trim(),
    pictures: {
      clue: picture(title),
      obeys: picture(`${title}: a filling that obeys`, example.obeys),
      breaks: picture(`${title}: a filling that breaks it`, example.breaks),
    },
  };
};

export const shownKinds = (): ShownKind[] => kinds.map(({ name, body }) => shownKind(name, body.form));
