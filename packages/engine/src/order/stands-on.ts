import type { Board } from "../board/board.ts";
import { listOf, without } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { OrderedBeat } from "./running-order.ts";

/** By beat, the earlier beats (indices) whose digits or removals its facts need. */
export const standsOn = (board: Board, beats: readonly OrderedBeat[]): number[][] => {
  const placedIn = new Map<Cell, number>();
  const removedIn = new Map<number, number>();
  return beats.map(({ steps }, beat) => {
    const needs = new Set<number>();
    for (const { deduction } of steps) {
      for (const [cell, digits] of deduction.because.facts) {
        const placed = placedIn.get(cell);
        if (placed !== undefined) needs.add(placed);
        else
          for (const digit of listOf(without(board.domains[cell]!, digits))) {
            const removed = removedIn.get(cell * 32 + digit);
            if (removed !== undefined) needs.add(removed);
          }
      }
    }
    for (const { deduction } of steps) {
      for (const [cell] of deduction.places) placedIn.set(cell, beat);
      for (const [cell, digits] of deduction.removes)
        for (const digit of listOf(digits))
          if (!removedIn.has(cell * 32 + digit)) removedIn.set(cell * 32 + digit, beat);
    }
    needs.delete(beat);
    return [...needs].sort((a, b) => a - b);
  });
};
