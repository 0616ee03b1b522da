import type { Board } from "../../board/board.ts";
import { isWithin, none } from "../../board/digits.ts";
import type { Knowledge } from "../../board/knowledge.ts";
import { keyOfRelated } from "../../board/related.ts";
import type { Conclusion, Deduction, Spot } from "../../deduce/deduction.ts";
import type { Judge } from "../../deduce/judge.ts";
import { alone } from "../anew.ts";

export const nothing: Conclusion = { places: new Map(), removes: new Map(), spots: [], relates: [] };

const isNothing = ({ places, removes, spots, relates }: Conclusion): boolean =>
  places.size + removes.size + spots.length + relates.length === 0;

const keyOfSpot = ({ house, digit, cells }: Spot): string => `${house} ${digit} ${[...cells].sort((a, b) => a - b)}`;

/** Whether a deduction says all of it. */
const concludes = ({ places, removes, spots, relates }: Conclusion, wanted: Conclusion): boolean =>
  !isNothing(wanted) &&
  [...wanted.places].every(([cell, digit]) => places.get(cell) === digit) &&
  [...wanted.removes].every(([cell, digits]) => isWithin(digits, removes.get(cell) ?? none)) &&
  wanted.spots.every((spot) => spots.some((other) => keyOfSpot(other) === keyOfSpot(spot))) &&
  wanted.relates.every((related) => relates.some((other) => keyOfRelated(other) === keyOfRelated(related)));

/** The deduction with just this concluded, its reasons small and proved; undefined where it does not conclude all of it. */
export const wayTo = (
  wanted: Conclusion,
  deduction: Deduction,
  knowledge: Knowledge,
  board: Board,
  judge: Judge,
): Deduction | undefined =>
  concludes(deduction, wanted) ? alone({ ...deduction, ...wanted }, knowledge, board, judge) : undefined;
