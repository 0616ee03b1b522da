import type { Board } from "../../board/board.ts";
import { digitsOf } from "../../board/digits.ts";
import { isSettled, type Knowledge } from "../../board/knowledge.ts";
import type { Deduction } from "../../deduce/deduction.ts";
import { aDigit, capital, counted, digitsSaid, listed } from "./counts.ts";
import { nounsFor } from "./nouns.ts";

const placesOf = (steps: readonly Deduction[]): number[] => steps.flatMap(({ places }) => [...places.values()]);

/** The house that holds all cells that the steps settle, a box before a row or column. */
const commonHouse = (board: Board, steps: readonly Deduction[]): string | undefined => {
  const cells = steps.flatMap(({ places }) => [...places.keys()]);
  return cells.length === 0
    ? undefined
    : board.houses.find((house) => cells.every((cell) => house.cells.includes(cell)))?.id;
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
    return capital(`the ${called ?? noun}${digits.length > 0 ? ` and the ${digitsSaid(digitsOf(digits))}` : ""}`);
  }
  const house = commonHouse(board, steps);
  if (digits.length > 1 && house) return capital(`${digitsSaid(digitsOf(digits))} in ${nouns.house(house)}`);
  if (digits.length > 0 && house) return capital(`the ${digitsSaid(digitsOf(digits))} of ${nouns.house(house)}`);
  const [because] = hardest.because.houses;
  if (digits.length > 0)
    return digits.length === 1 ? capital(`${aDigit(digits[0]!)} more`) : capital(listed(digits.map(aDigit)));
  return because ? capital(nouns.house(because)) : "A mark less";
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

/** What there is to work with as an act begins: where it starts. How many cells are open the act before has said. */
export const actOpening = (board: Board, steps: readonly Deduction[], before: Knowledge, isFirst: boolean): string => {
  const nouns = nounsFor(board, "pointing");
  const [first] = steps;
  const [rule] = first!.because.rules;
  const [house] = first!.because.houses;
  const open = before.settled.filter((is) => !is).length;
  const where = rule && !board.rule(rule)!.wholeGrid ? nouns.rule(rule) : house ? nouns.house(house) : "this cell";
  if (isFirst)
    return before.settled.some(Boolean)
      ? `There is enough here to begin: look at ${where}.`
      : `No digit is given, so we start from the clues: ${where} first.`;
  if (steps.every(({ level }) => level === 1))
    return placesOf(steps).length === open
      ? `Only easy digits are left: ${counted(open)} of them, beginning with ${where}.`
      : `The next digits are easy. Begin with ${where}.`;
  return `Next, ${where}.`;
};

/** What an act gave. */
export const actClosing = (board: Board, steps: readonly Deduction[], end: Knowledge): string => {
  const digits = steps.reduce((sum, { places }) => sum + places.size, 0);
  const open = end.settled.filter((is) => !is).length;
  const isFull = (index: number): boolean =>
    board.canvas.grids.every((grids, cell) => !grids.includes(index) || isSettled(end, cell));
  const isEntered = (index: number): boolean =>
    steps.some(({ places }) => [...places.keys()].some((cell) => board.canvas.grids[cell]!.includes(index)));
  const finished = board.puzzle.grids.filter((_, index) => isFull(index) && isEntered(index));
  if (open === 0) return board.puzzle.grids.length > 1 ? "And that fills all the grids." : "And that fills the grid.";
  const [grid] = finished;
  const gave = `${capital(counted(digits))} ${digits === 1 ? "digit" : "digits"}`;
  return grid ? `${gave} more, and ${grid.called} is finished.` : `${gave} more, and ${counted(open)} to go.`;
};
