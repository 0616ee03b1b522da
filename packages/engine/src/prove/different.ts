import type { Cell } from "../puzzle/canvas.ts";
import { type Constraint, type Domains, isSettled, lowest } from "./constraint.ts";

/** A settled digit leaves the other cells. */
const sight = (cells: readonly Cell[], { at, keep }: Domains): boolean => {
  let settled = 0;
  for (const cell of cells) {
    const digits = at[cell]!;
    if (!isSettled(digits)) continue;
    if ((settled & digits) !== 0) return false;
    settled |= digits;
  }
  if (settled === 0) return true;
  for (const cell of cells) if (!isSettled(at[cell]!) && !keep(cell, ~settled)) return false;
  return true;
};

/** A digit with one place left goes there. */
const lastPlaces = ({ cells, digits }: { cells: readonly Cell[]; digits: number }, { at, keep }: Domains): boolean => {
  let once = 0;
  let twice = 0;
  for (const cell of cells) {
    twice |= once & at[cell]!;
    once |= at[cell]!;
  }
  if ((digits & ~once) !== 0) return false;
  const single = digits & ~twice;
  if (single === 0) return true;
  for (const cell of cells) {
    const here = at[cell]! & single;
    if (here !== 0 && (!isSettled(here) || !keep(cell, here))) return false;
  }
  return true;
};

/** Whether the cells can still be matched to digits; the last matching is kept and mended. */
const matching = (cells: readonly Cell[]): Constraint => {
  const digitOf = new Int8Array(cells.length).fill(-1);
  const ownerOf = new Int8Array(32).fill(-1);
  let at: Int32Array;
  let tried = 0;
  let free = 0;
  const give = (place: number, digit: number): true => {
    digitOf[place] = digit;
    ownerOf[digit] = place;
    free &= ~(1 << digit);
    return true;
  };
  const augment = (place: number): boolean => {
    const here = at[cells[place]!]!;
    if ((here & free) !== 0) return give(place, lowest(here & free));
    for (let rest = here & ~tried; rest !== 0; rest = here & ~tried) {
      const digit = lowest(rest);
      tried |= 1 << digit;
      if (augment(ownerOf[digit]!)) return give(place, digit);
    }
    return false;
  };
  const loosen = (place: number): void => {
    const digit = digitOf[place]!;
    if (digit >= 0 && (at[cells[place]!]! & (1 << digit)) === 0) {
      digitOf[place] = -1;
      ownerOf[digit] = -1;
    } else if (digit >= 0) free &= ~(1 << digit);
  };
  const narrow = (domains: Domains): boolean => {
    at = domains.at;
    free = -1;
    for (let place = 0; place < cells.length; place++) loosen(place);
    for (let place = 0; place < cells.length; place++) {
      tried = 0;
      if (digitOf[place]! < 0 && !augment(place)) return false;
    }
    return true;
  };
  return { cells, effort: 1, narrow };
};

/** No digit twice; `complete` are the digits that must all be placed (0: none must). */
export const different = (cells: readonly Cell[], complete: number): Constraint[] => {
  const group = { cells, digits: complete };
  const narrow = (domains: Domains): boolean => sight(cells, domains) && (complete === 0 || lastPlaces(group, domains));
  const first: Constraint = { cells, effort: 0, narrow };
  return cells.length > 2 ? [first, matching(cells)] : [first];
};
