import type { Board } from "../board/board.ts";
import { count, type Digits } from "../board/digits.ts";
import { isSettled, type Knowledge, startOf } from "../board/knowledge.ts";
import { after } from "../deduce/after.ts";
import type { Deduction } from "../deduce/deduction.ts";
import { effortOf, travel } from "../deduce/effort.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Costs } from "./costs.ts";
import type { OrderedBeat, Writes } from "./running-order.ts";

/** What a whole order asks of those who follow it; each in its own unit (costs.ts). */
export interface Asked {
  readonly seconds: number;
  readonly words: number;
  readonly thoughts: number;
  /** Marks that stand, summed over the beats. */
  readonly standing: number;
  readonly travel: number;
}

export const priceOf = ({ seconds, words, thoughts, standing, travel }: Asked, costs: Costs): number =>
  seconds + costs.word * words + costs.thought * thoughts + costs.standing * standing + costs.travel * travel;

const concluded = ({ places, removes }: Deduction): Cell[] => [...places.keys(), ...removes.keys()];

/** The pencil marks that stand after each beat: digits of cells and places of spots, as sight and steps leave them. */
const standingOf = (written: readonly Writes[], knowledge: Knowledge): number => {
  const cells = new Map<Cell, Digits>();
  const spots = new Map<string, readonly Cell[]>();
  for (const writes of written) {
    for (const [cell, digits] of writes.cells) cells.set(cell, digits);
    for (const { house, digit, cells: places } of writes.spots)
      spots.set(
        `${house} ${digit}`,
        places.filter((cell) => !isSettled(knowledge, cell)),
      );
  }
  let sum = 0;
  for (const [cell, digits] of cells)
    if (!isSettled(knowledge, cell)) sum += count((digits & knowledge.possible[cell]!) as Digits);
  for (const places of spots.values()) if (places.length > 1) sum += places.length;
  return sum;
};

/** Thoughts, marks and ways of an order; its words and seconds come with its lines. */
export const askedOf = (
  board: Board,
  beats: readonly OrderedBeat[],
  told: { readonly seconds: number; readonly words: number },
): Asked => {
  let knowledge = startOf(board);
  let eye: readonly Cell[] = [];
  const sum = { thoughts: 0, standing: 0, travel: 0 };
  const written: Writes[] = [];
  for (const { steps, writes } of beats) {
    for (const { deduction } of steps) {
      const cells = concluded(deduction);
      sum.thoughts += effortOf(deduction, knowledge);
      sum.travel += travel(board, eye, cells);
      eye = cells;
      knowledge = after(knowledge, board, deduction);
    }
    written.push(writes);
    sum.standing += standingOf(written, knowledge);
  }
  return { ...told, ...sum };
};
