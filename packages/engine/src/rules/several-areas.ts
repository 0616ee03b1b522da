import type { Cell, Place } from "../puzzle/canvas.ts";
import { counted } from "../speech/english/counts.ts";
import { writePath } from "./bodies/path-text.ts";
import { cellsAt } from "./cells.ts";
import type { Fault, Setting } from "./contract.ts";

export const cellsOfAreas = (areas: readonly (readonly Place[])[], setting: Setting): Cell[][] =>
  areas.map((places) => cellsAt(setting, places));

/** All cells of the areas, each once. */
export const allCells = (areas: readonly (readonly Cell[])[]): Cell[] => [...new Set(areas.flat())];

/** The first area with each of the others. */
export const withFirst = <T>([first, ...others]: readonly T[]): [T, T][] => others.map((other) => [first!, other]);

/** Areas that have not as many cells as the first. */
export const unequalSizes = (areas: readonly (readonly Place[])[]): Fault[] =>
  areas.flatMap((places, k) =>
    places.length === areas[0]!.length
      ? []
      : [
          {
            at: ["areas", k],
            read: writePath(places),
            right: `${counted(areas[0]!.length)} ${areas[0]!.length === 1 ? "cell" : "cells"}, as in the first area`,
          },
        ],
  );

/** Areas of the very cells of an earlier one. */
export const sameCells = (areas: readonly (readonly Cell[])[], written: readonly (readonly Place[])[]): Fault[] => {
  const keys = areas.map((cells) => [...cells].sort((a, b) => a - b).join());
  const first = new Map(keys.map((key, k) => [key, k] as const).reverse());
  return areas.flatMap((_, k) =>
    first.get(keys[k]!)! < k
      ? [{ at: ["areas", k], read: writePath(written[k]!), right: "other cells than in the areas before" }]
      : [],
  );
};

/** The letter by which the areas of one instance are known: its place among its kind, a for the first. */
export const letterOf = (id: string): string => {
  const place = Number(id.split("/").at(-1)) - 1;
  return (place >= 26 ? String.fromCharCode(96 + Math.floor(place / 26)) : "") + String.fromCharCode(97 + (place % 26));
};

/** The letter where it is needed to tell the areas from those of an earlier instance. */
export const letterFromSecond = (id: string): string => (letterOf(id) === "a" ? "" : letterOf(id));
