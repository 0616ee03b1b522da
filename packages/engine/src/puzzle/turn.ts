import { digitsOf, listOf } from "../board/digits.ts";
import type { GridLine, Side, Turning } from "../rules/body.ts";
import type { Kind } from "../rules/contract.ts";
import { gridOfLine } from "../rules/outside-line.ts";
import { kinds as allKinds, kindNamed } from "../rules/registry.ts";
import { type Canvas, type Cell, canvasOf, cellAt, type Place } from "./canvas.ts";
import type { Draft, Grid, RuleEntry } from "./puzzle.ts";
import { boxed } from "./regions.ts";

/** One of the eight ways to lay a sheet down: rows and columns change places first, then the sheet is mirrored. */
export interface Turn {
  readonly name: string;
  readonly swap: boolean;
  /** Top to bottom. */
  readonly flip: boolean;
  /** Left to right. */
  readonly mirror: boolean;
}

const turn = (name: string, swap: boolean, flip: boolean, mirror: boolean): Turn => ({ name, swap, flip, mirror });

export const turns: readonly Turn[] = [
  turn("as it is", false, false, false),
  turn("a quarter to the right", true, false, true),
  turn("half round", false, true, true),
  turn("a quarter to the left", true, true, false),
  turn("left to right", false, false, true),
  turn("top to bottom", false, true, false),
  turn("rows to columns", true, false, false),
  turn("rows to columns from the far corner", true, true, true),
];

/** The turn that takes it back. */
export const inverse = ({ swap, flip, mirror }: Turn): Turn =>
  turns.find(
    (other) => other.swap === swap && other.flip === (swap ? mirror : flip) && other.mirror === (swap ? flip : mirror),
  )!;

/** The rows and columns that the grids take up; the sheet is turned within them. */
const extentOf = (grids: readonly Grid[]) => ({
  top: Math.min(...grids.map(({ row }) => row)),
  bottom: Math.max(...grids.map(({ row, size }) => row + size - 1)),
  left: Math.min(...grids.map(({ column }) => column)),
  right: Math.max(...grids.map(({ column, size }) => column + size - 1)),
});

const placeTurned = ({ swap, flip, mirror }: Turn, grids: readonly Grid[]): Turning["place"] => {
  const { top, bottom, left, right } = extentOf(grids);
  const rows = swap ? left + right : top + bottom;
  const columns = swap ? top + bottom : left + right;
  return (place) => {
    const [row, column] = swap ? [place.column, place.row] : [place.row, place.column];
    return { row: flip ? rows - row : row, column: mirror ? columns - column : column };
  };
};

const swapped: Readonly<Record<Side, Side>> = { left: "top", top: "left", right: "bottom", bottom: "right" };
const flipped: Readonly<Record<Side, Side>> = { left: "left", right: "right", top: "bottom", bottom: "top" };
const mirrored: Readonly<Record<Side, Side>> = { left: "right", right: "left", top: "top", bottom: "bottom" };

const sideTurned = (side: Side, { swap, flip, mirror }: Turn): Side => {
  const once = swap ? swapped[side] : side;
  const twice = flip ? flipped[once] : once;
  return mirror ? mirrored[twice] : twice;
};

/** Where a puzzle has several grids the turned line names its own, for its new number may fit others too. */
const lineTurned =
  (turn: Turn, grids: readonly Grid[]): Turning["line"] =>
  (line) => {
    const grid = gridOfLine(line, grids);
    if ("faults" in grid) throw new Error(`there is no single ${line.axis} ${line.number} to turn`);
    const axis: GridLine["axis"] = turn.swap === (line.axis === "row") ? "column" : "row";
    const isReversed = axis === "row" ? turn.flip : turn.mirror;
    const isNamed = line.grid !== undefined || grids.length > 1;
    return {
      axis,
      number: isReversed ? grid.size + 1 - line.number : line.number,
      ...(isNamed ? { grid: grid.id } : {}),
      ...(line.from ? { from: sideTurned(line.from, turn) } : {}),
    };
  };

/** What the turn does to what bodies name, in a puzzle of these grids. */
export const turningOf = (turn: Turn, grids: readonly Grid[]): Turning => ({
  place: placeTurned(turn, grids),
  line: lineTurned(turn, grids),
  diagonal: (which) => (which === "both" || turn.flip === turn.mirror ? which : which === "down" ? "up" : "down"),
});

const least = (a: Place, b: Place): Place => ({ row: Math.min(a.row, b.row), column: Math.min(a.column, b.column) });

const gridTurned = (grid: Grid, turn: Turn, { place }: Turning): Grid => {
  const { size, box, regions, row, column } = grid;
  const corner = least(place(grid), place({ row: row + size - 1, column: column + size - 1 }));
  if (box) return { ...grid, ...corner, ...boxed(size, turn.swap ? { rows: box.columns, columns: box.rows } : box) };
  if (!regions) return { ...grid, ...corner };
  const letters: string[] = [];
  for (const [k, letter] of regions.entries()) {
    const to = place({ row: row + Math.floor(k / size), column: column + (k % size) });
    letters[(to.row - corner.row) * size + to.column - corner.column] = letter;
  }
  return { ...grid, ...corner, regions: letters };
};

const inOrder = (givens: Iterable<readonly [Cell, number]>): ReadonlyMap<Cell, number> =>
  new Map([...givens].sort(([a], [b]) => a - b));

interface Options {
  readonly kinds?: readonly Kind[];
}

const needed = ({ kind: name }: RuleEntry, kinds: readonly Kind[]): Kind => {
  const kind = kindNamed(name, kinds);
  if (!kind) throw new Error(`${name} is no kind of rule`);
  return kind;
};

/** Whether the puzzle says the same after the turn: a rule whose digits count places is kept by swapping rows and columns alone. */
export const mayTurn = ({ rules }: Draft, { flip, mirror }: Turn, { kinds = allKinds }: Options = {}): boolean =>
  !(flip || mirror) || !rules.some((rule) => needed(rule, kinds).countsPlaces);

/** Where each cell goes, by cell of the canvas before. */
export const cellsTurned = (canvas: Canvas, turned: Canvas, { place }: Turning): Cell[] =>
  canvas.places.map((before) => cellAt(turned, place(before))!);

/** The whole puzzle turned or mirrored: grids, regions, givens and rules; ids stay. */
export const turned = <P extends Draft>(puzzle: P, turn: Turn, { kinds = allKinds }: Options = {}): P => {
  const turning = turningOf(turn, puzzle.grids);
  const grids = puzzle.grids.map((grid) => gridTurned(grid, turn, turning));
  const canvas = canvasOf(grids);
  const cells = cellsTurned(puzzle.canvas, canvas, turning);
  const rules = puzzle.rules.map((rule) => ({ ...rule, body: needed(rule, kinds).body.turn(rule.body, turning) }));
  return {
    ...puzzle,
    grids,
    canvas,
    givens: inOrder([...puzzle.givens].map(([cell, digit]) => [cells[cell]!, digit])),
    rules,
  };
};

const isMirror = (relabel: (digit: number) => number, grids: readonly Grid[]): boolean => {
  const digits = grids[0]?.digits ?? [];
  const ends = digits[0]! + digits.at(-1)!;
  const isOneRun =
    digits.at(-1)! - digits[0]! === digits.length - 1 && grids.every((grid) => grid.digits.join() === digits.join());
  return isOneRun && digits.every((digit) => relabel(digit) === ends - digit);
};

/**
 * The puzzle with its digits renamed, or undefined where one of its rules does not stand it: the kinds say so. `relabel`
 * must give different digits from 0 to 31 for different digits.
 */
export const relabelled = <P extends Draft>(
  puzzle: P,
  relabel: (digit: number) => number,
  { kinds = allKinds }: Options = {},
): P | undefined => {
  const mirrors = isMirror(relabel, puzzle.grids);
  const stands = puzzle.rules.every((rule) => {
    const { relabels } = needed(rule, kinds);
    return relabels === "any" || (relabels === "mirror" && mirrors);
  });
  if (!stands) return undefined;
  const renamed = (digits: readonly number[]): number[] => listOf(digitsOf(digits.map(relabel)));
  const grids = puzzle.grids.map((grid) => ({ ...grid, digits: renamed(grid.digits) }));
  return { ...puzzle, grids, givens: new Map([...puzzle.givens].map(([cell, digit]) => [cell, relabel(digit)])) };
};
