import type { Digits } from "../board/digits.ts";
import type { BorderLook } from "../marks/border.ts";
import type { Cell, Place } from "../puzzle/canvas.ts";
import { writePath } from "./bodies/path-text.ts";
import { cellsAt } from "./cells.ts";
import type { Bound, EdgeMark, Fault, Setting } from "./contract.ts";
import { domainsText, inWords } from "./in-words.ts";

/** Cells inside a border with a label in its first cell. */
export interface Area extends Bound, BorderLook {}

const edgeMarks: readonly EdgeMark[] = ["dot", "bar", "xv"];
const inReadingOrder = (a: Place, b: Place): number => a.row - b.row || a.column - b.column;

/** Whether a mark stands on the left side of the area's first cell, where its label would be. */
const isLeftMarked = (setting: Setting, places: readonly Place[]): boolean => {
  const { row, column } = [...places].sort(inReadingOrder)[0]!;
  const isThere = (cell: Cell, left: number): boolean =>
    setting.canvas.places[cell]!.row === row && setting.canvas.places[cell]!.column === left;
  return edgeMarks.some((mark) =>
    setting
      .marked(mark)
      .some(
        ([a, b]) => [a, b].some((cell) => isThere(cell, column)) && [a, b].some((cell) => isThere(cell, column - 1)),
      ),
  );
};

export const areaAt = (places: readonly Place[], tint: string | undefined, setting: Setting): Area => ({
  cells: cellsAt(setting, places),
  places: [...places].sort(inReadingOrder),
  ink: tint === undefined ? "ink" : "clue-ink",
  pushed: isLeftMarked(setting, places),
});

/** What the cells of the area can hold, cell by cell. */
export const domainsIn = ({ domains }: Setting, { cells }: Bound): Digits[] => cells.map((cell) => domains[cell]!);

/** Cells that can't all differ. */
export const tooManyToDiffer = (places: readonly Place[], domains: readonly Digits[]): Fault => ({
  at: ["cells"],
  read: writePath(places),
  right: `cells that can all differ; ${inWords(domains.length)} with the digits ${domainsText(domains)} can't`,
});
