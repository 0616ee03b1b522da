import type { Digits } from "../board/digits.ts";
import { remembered } from "../board/remembered.ts";
import type { BorderLook } from "../marks/border.ts";
import type { Cell, Place } from "../puzzle/canvas.ts";
import { counted } from "../speech/english/counts.ts";
import { writePath } from "./bodies/path-text.ts";
import { cellsAt } from "./cells.ts";
import type { Bound, EdgeMark, Fault, Setting } from "./contract.ts";
import { domainsText } from "./in-words.ts";

/** Cells inside a border with a label in its first cell. */
export interface Area extends Bound, BorderLook {}

const edgeMarks: readonly EdgeMark[] = ["dot", "bar", "xv"];
const inReadingOrder = (a: Place, b: Place): number => a.row - b.row || a.column - b.column;

/** The cells on whose left side a mark stands. */
const leftMarked = remembered((setting: Setting): ReadonlySet<Cell> => {
  const { places } = setting.canvas;
  const marks = edgeMarks.flatMap((mark) => setting.marked(mark));
  const level = marks.filter(([a, b]) => places[a]!.row === places[b]!.row);
  return new Set(level.map(([a, b]) => (places[a]!.column > places[b]!.column ? a : b)));
});

export const areaAt = (places: readonly Place[], tint: string | undefined, setting: Setting): Area => {
  const inOrder = [...places].sort(inReadingOrder);
  return {
    cells: cellsAt(setting, places),
    places: inOrder,
    ink: tint === undefined ? "ink" : "clue-ink",
    // Where its label would be.
    pushed: leftMarked(setting).has(cellsAt(setting, inOrder)[0]!),
  };
};

/** What the cells of the area can hold, cell by cell. */
export const domainsIn = ({ domains }: Setting, { cells }: Bound): Digits[] => cells.map((cell) => domains[cell]!);

/** Cells that can't all differ. */
export const tooManyToDiffer = (places: readonly Place[], domains: readonly Digits[]): Fault => ({
  at: ["cells"],
  read: writePath(places),
  right: `cells that can all differ; ${counted(domains.length)} with the digits ${domainsText(domains)} can't`,
});
