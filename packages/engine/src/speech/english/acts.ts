import type { Board } from "../../board/board.ts";
import { countOpen, countSettled, isSettled, type Knowledge } from "../../board/knowledge.ts";
import type { Deduction } from "../../deduce/deduction.ts";
import type { Act } from "../../order/acts.ts";
import { capital, counted } from "./counts.ts";
import { nounsFor } from "./nouns.ts";

export const rulesTitle = "The rules";

const ofOneGrid = {
  "way-in": "The way in",
  middle: "The middle",
  "first-half": "It opens up",
  "second-half": "Further in",
  finish: "The finish",
} satisfies Record<Act["part"], string>;

export const actTitle = ({ puzzle }: Board, { part, grid, isAgain }: Act): string => {
  if (part !== "middle" || puzzle.grids.length === 1) return ofOneGrid[part];
  if (grid === undefined) return isAgain ? "Between the grids again" : "Between the grids";
  return `${isAgain ? "Back in" : "Across"} ${puzzle.grids[grid]!.called}`;
};

/** Where an act begins: a clue before a house, its name and its cells. */
interface Where {
  readonly named: string;
  readonly cells: readonly number[];
}

const whereOf = (board: Board, { because }: Deduction): Where => {
  const nouns = nounsFor(board, "pointing");
  const rule = because.rules.find((id) => !board.rule(id)!.wholeGrid);
  const [house] = because.houses;
  if (rule !== undefined) return { named: nouns.rule(rule), cells: board.rule(rule)!.cells };
  if (house !== undefined) return { named: nouns.house(house), cells: board.house(house)!.cells };
  return { named: "this cell", cells: [] };
};

/** As few open cells are worth counting; of more, the digits that stand there are. */
const fewOpen = 3;

/** "with only two cells open", "with five digits in it by now". */
const standingIn = ({ cells }: Where, { settled }: Knowledge): string | undefined => {
  const standing = cells.filter((cell) => settled[cell]).length;
  const open = cells.length - standing;
  if (standing === 0) return cells.length > 2 ? "with nothing in it yet" : undefined;
  if (open === 1) return "with one cell open";
  if (open > 1 && open <= fewOpen) return `with only ${counted(open)} cells open`;
  return `with ${counted(standing)} ${standing === 1 ? "digit" : "digits"} in it by now`;
};

const firstOpening = ({ named }: Where, before: Knowledge): string => {
  const given = countSettled(before);
  if (given === 0) return `No digit is given, so we start from the clues: ${named} first.`;
  const digits = given === 1 ? "One digit is given" : `${capital(counted(given))} digits are given`;
  return `${digits}, and the way in is ${named}.`;
};

/** What stands in the grid to which the talk goes over. */
const gridOpening = (board: Board, grid: number, { named }: Where, before: Knowledge): string => {
  const standing = board.canvas.grids.filter((grids, cell) => grids.includes(grid) && isSettled(before, cell)).length;
  const { called } = board.puzzle.grids[grid]!;
  if (standing === 0) return `${capital(called)} is still empty: ${named} first.`;
  return `${capital(called)} has ${counted(standing)} ${standing === 1 ? "digit" : "digits"} now: ${named} first.`;
};

/** What there is to work with as an act begins, and where it starts. */
export const actOpening = (board: Board, act: Act, steps: readonly Deduction[], before: Knowledge): string => {
  const where = whereOf(board, steps[0]!);
  const { named } = where;
  if (act.part === "way-in") return firstOpening(where, before);
  if (act.part === "finish" && steps.every(({ level }) => level === 1)) {
    const open = countOpen(before);
    return `Only easy digits are left: ${counted(open)} of them, beginning with ${named}.`;
  }
  if (act.grid !== undefined) return gridOpening(board, act.grid, where, before);
  const standing = standingIn(where, before);
  return standing ? `Next, ${named}, ${standing}.` : `Next, ${named}.`;
};

/** What an act gave. */
export const actClosing = (board: Board, steps: readonly Deduction[], end: Knowledge): string => {
  const digits = steps.reduce((sum, { places }) => sum + places.size, 0);
  const open = countOpen(end);
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
