import { listOf } from "../board/digits.ts";
import type { PathBody } from "./bodies/path.ts";
import { writePath } from "./bodies/path-text.ts";
import { type Faulty, faulty, type Setting } from "./contract.ts";
import { digitsText } from "./in-words.ts";
import { type Line, lineOf } from "./line.ts";

/** A line whose digits climb by `gap` or more a cell, or the first cell that has nothing high enough. */
export const climbing = ({ cells: places }: PathBody, setting: Setting, gap: 0 | 1): Line | Faulty => {
  const line = lineOf(places, setting);
  let least = 0;
  for (const cell of line.cells) {
    const digit = listOf(setting.domains[cell]!).find((other) => other >= least);
    if (digit === undefined) {
      const needs = `${setting.canvas.names[cell]} needs ${least} or more and has ${digitsText(setting.domains[cell]!)}`;
      return faulty({ at: ["cells"], read: writePath(places), right: `a line whose digits can climb; ${needs}` });
    }
    least = digit + gap;
  }
  return line;
};
