import type { Board } from "../../board/board.ts";
import { digitsOf } from "../../board/digits.ts";
import type { Deduction } from "../../deduce/deduction.ts";
import { aDigit, capital, counted, digitsSaid } from "./counts.ts";
import { nounsFor } from "./nouns.ts";

const placesOf = (steps: readonly Deduction[]): number[] => steps.flatMap(({ places }) => [...places.values()]);

/** The house that holds all cells that the steps settle: one that the steps speak of, else a box before a row or column. */
const commonHouse = (board: Board, steps: readonly Deduction[]): string | undefined => {
  const cells = steps.flatMap(({ places }) => [...places.keys()]);
  if (cells.length === 0) return undefined;
  const holding = board.houses.filter((house) => cells.every((cell) => house.cells.includes(cell)));
  const spoken = new Set(steps.flatMap(({ because }) => because.houses));
  return (holding.find(({ id }) => spoken.has(id)) ?? holding[0])?.id;
};

/** "the 3 and 5", "four digits": as many as a name has room for. */
const digitsNamed = (digits: readonly number[]): string =>
  digits.length <= mostNamed ? `the ${digitsSaid(digitsOf(digits))}` : `${counted(digits.length)} digits`;
const mostNamed = 3;

/** A clue and what it gives: "the cage of 5 gives the 4, and two more"; of marks only, "the cage of 3, then the 2". */
const clueNamed = (clue: string, hardest: Deduction, digits: readonly number[]): string => {
  const own = [...hardest.places.values()];
  if (digits.length === 0) return clue;
  if (own.length === 0) return `${clue}, then ${digitsNamed(digits)}`;
  const more = digits.length - own.length;
  return `${clue} gives ${digitsNamed(own)}${more > 0 ? `, and ${counted(more)} more` : ""}`;
};

/** The one grid that holds all these cells, and the words for where in it they lie, where that can be said. */
const placeNamed = (board: Board, steps: readonly Deduction[]): string => {
  const cells = steps.flatMap(({ places }) => [...places.keys()]);
  const grid = board.puzzle.grids.findIndex((_, index) =>
    cells.every((cell) => board.canvas.grids[cell]!.includes(index)),
  );
  if (grid < 0) return "across the grids";
  const { row, column, size, called } = board.puzzle.grids[grid]!;
  const third = (offset: number): number => Math.floor((3 * offset) / size);
  const across = new Set(cells.map((cell) => third(board.canvas.places[cell]!.column - column)));
  const down = new Set(cells.map((cell) => third(board.canvas.places[cell]!.row - row)));
  const words = [
    down.size === 1 ? ["at the top", "across the middle", "at the bottom"][[...down][0]!] : undefined,
    across.size === 1 ? ["on the left", "down the middle", "on the right"][[...across][0]!] : undefined,
  ].filter((word) => word !== undefined);
  const where = words.length === 1 ? words[0]! : "";
  if (board.puzzle.grids.length > 1) return where ? `${where} of ${called}` : `in ${called}`;
  return where || "round the grid";
};

/** A short name for a beat: what it gives and where. */
export const beatName = (board: Board, steps: readonly Deduction[]): string => {
  const nouns = nounsFor(board, "placed");
  const digits = placesOf(steps);
  const hardest = steps.reduce((a, b) => (b.level > a.level ? b : a));
  const [rule] = hardest.because.rules;
  if (hardest.assume) return `What if it's ${hardest.assume[1]}?`;
  if (rule && hardest.level > 1) {
    const { called, noun } = nouns.words(rule);
    return capital(clueNamed(`the ${called ?? noun}`, hardest, digits));
  }
  const house = commonHouse(board, steps);
  if (digits.length > 1 && house) return capital(`${digitsSaid(digitsOf(digits))} in ${nouns.house(house)}`);
  if (digits.length > 0 && house) return capital(`the ${digitsSaid(digitsOf(digits))} of ${nouns.house(house)}`);
  if (digits.length > 0) return capital(`${several(digits)} ${placeNamed(board, steps)}`);
  const [because] = hardest.because.houses;
  return because ? capital(nouns.house(because)) : "A mark less";
};

/** "three 4s", "five digits". */
const several = (digits: readonly number[]): string => {
  const [digit] = digits;
  if (digits.length === 1) return aDigit(digit!);
  return new Set(digits).size === 1 ? `${counted(digits.length)} ${digit}s` : `${counted(digits.length)} digits`;
};

/** An invitation to stop and look before a hard step, the first of these; it gives nothing away but what to look for. */
export const pauseLine = (board: Board, steps: readonly Deduction[], isAgain: boolean): string => {
  const nouns = nounsFor(board, "pointing");
  const [hard] = steps;
  const [digit] = steps.flatMap(({ places }) => [...places.values()]);
  const [rule] = hard!.because.rules.filter((id) => !board.rule(id)!.wholeGrid);
  const [house] = hard!.because.houses;
  const goal =
    digit !== undefined
      ? `look for the ${digit}`
      : `look at ${rule ? nouns.rule(rule) : house ? nouns.house(house) : "these cells"}`;
  return isAgain ? `The next one is hard too: pause and ${goal}.` : `Pause here if you like, and ${goal}.`;
};

/** How a line begins that would open like the one before it. */
export const moved = { near: "Here, ", away: "Elsewhere, " };
