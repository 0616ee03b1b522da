import type { Board } from "../../board/board.ts";
import { isSettled, type Knowledge } from "../../board/knowledge.ts";
import type { Burst } from "../../deduce/chain.ts";
import { type Cell, cellNamed } from "../../puzzle/canvas.ts";
import type { Pool } from "../pool.ts";
import type { Corner, Wish } from "./wish.ts";

/** A way on, as far as wishes ask about it. */
interface Way {
  readonly burst: Burst;
  readonly cell: Cell;
}

/** Leaves of the ways on from a state those that a wish allows; all of them where it allows none. */
export type Gate = <T extends Way>(ways: readonly T[], knowledge: Knowledge, isStart: boolean) => readonly T[];

const orAll = <T>(some: readonly T[], all: readonly T[]): readonly T[] => (some.length > 0 ? some : all);

/** Until the cell is settled only what it stands on, by the reasoning's own way to it. */
const firstGate = (cell: Cell, pool: Pool): Gate => {
  const ground = pool.ground(cell);
  return (ways, knowledge) =>
    isSettled(knowledge, cell)
      ? ways
      : orAll(
          ways.filter((way) => way.cell === cell),
          orAll(
            ways.filter((way) => ground.has(way.cell)),
            ways,
          ),
        );
};

/** Whether the cell lies in this grid and in no other. */
export const isOnlyIn = (board: Board, cell: Cell, grid: number): boolean =>
  board.canvas.grids[cell]!.every((other) => other === grid);

const laterGate =
  (board: Board, grid: number): Gate =>
  (ways) =>
    orAll(
      ways.filter(({ cell }) => !isOnlyIn(board, cell, grid)),
      ways,
    );

/** How far a cell lies from a corner of a grid, in steps of a king; infinite outside. */
export const fromCorner = (board: Board, cell: Cell, grid: number, corner: Corner): number => {
  if (!board.canvas.grids[cell]!.includes(grid)) return Number.POSITIVE_INFINITY;
  const { row, column, size } = board.puzzle.grids[grid]!;
  const place = board.canvas.places[cell]!;
  const [down, right] = [place.row - row, place.column - column];
  return Math.max(
    corner.startsWith("top") ? down : size - 1 - down,
    corner.endsWith("left") ? right : size - 1 - right,
  );
};

const cornerGate =
  (board: Board, grid: number, corner: Corner): Gate =>
  (ways, _, isStart) => {
    if (!isStart) return ways;
    const nearest = Math.min(...ways.map(({ cell }) => fromCorner(board, cell, grid, corner)));
    return orAll(
      ways.filter(({ cell }) => fromCorner(board, cell, grid, corner) === nearest),
      ways,
    );
  };

const gridNamed = (board: Board, id: string): number => board.puzzle.grids.findIndex((grid) => grid.id === id);

const gateOf = (wish: Wish, board: Board, pool: Pool): Gate | undefined => {
  if (wish.wish === "first") {
    const cell = cellNamed(board.canvas, wish.cell);
    return cell === undefined ? undefined : firstGate(cell, pool);
  }
  if (wish.wish === "later") return laterGate(board, gridNamed(board, wish.grid));
  if (wish.wish === "corner") return cornerGate(board, gridNamed(board, wish.grid), wish.corner);
  return undefined;
};

/** All wishes for the order, one after the other: what the first leaves is what the next may choose from. */
export const gatesOf = (wishes: readonly Wish[], board: Board, pool: Pool): Gate => {
  const gates = wishes.map((wish) => gateOf(wish, board, pool)).filter((gate) => gate !== undefined);
  return (ways, knowledge, isStart) => gates.reduce((left, gate) => gate(left, knowledge, isStart), ways);
};
