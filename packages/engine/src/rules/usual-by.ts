import { digitsOf } from "../board/digits.ts";
import type { PathByBody } from "./bodies/path.ts";
import { writePath } from "./bodies/path-text.ts";
import { cellsAt } from "./cells.ts";
import { type Faulty, faulty, type Setting } from "./contract.ts";

const oneToNine = digitsOf([1, 2, 3, 4, 5, 6, 7, 8, 9]);

/** The body's `by`; where it is left out, the usual one, if every grid of the line's cells has the digits 1-9. */
export const byOf = ({ cells, by }: PathByBody, setting: Setting, usual: number): number | Faulty => {
  if (by !== undefined) return by;
  const under = cellsAt(setting, cells).flatMap((cell) => setting.canvas.grids[cell]!);
  if (under.every((grid) => digitsOf(setting.grids[grid]!.digits) === oneToNine)) return usual;
  return faulty({
    read: writePath(cells),
    right: "{ cells, by }: off the digits 1-9 the least difference must be said",
  });
};

/** The greatest number below `by` that would do, from which a fault can be mended. */
export const lesserBy = (by: number, does: (by: number) => boolean): string => {
  for (let less = Math.min(by - 1, 31); less > 0; less--) if (does(less)) return `by of ${less} or less`;
  return "cells that leave more digits to choose from";
};
