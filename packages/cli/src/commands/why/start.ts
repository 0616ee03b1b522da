import {
  afterStep,
  type Board,
  clashingIn,
  type Knowledge,
  knownFrom,
  type Plan,
  type Position,
  type Solution,
  type SpotFact,
  startOf,
  type WishList,
  wrongIn,
  wrongMarksIn,
  wrongSpotsIn,
} from "@solvewright/engine";
import { beatIn } from "../../beat-in.ts";
import type { Asked } from "../../command.ts";
import { planOf } from "../../show.ts";

/** The board from which a question is asked. */
export interface Start {
  readonly known: Knowledge;
  /** Cells that are settled wrongly there, by name. */
  readonly wrong: readonly string[];
  /** Cells whose marks leave the right digit out, by name. */
  readonly wrongMarks: readonly string[];
  /** Spot marks that leave the right place out. */
  readonly wrongSpots: readonly SpotFact[];
  /** Nobody can say which entries are right: there is not exactly one solution. */
  readonly onTrust: boolean;
}

const nothingWrong = { wrong: [], wrongMarks: [], wrongSpots: [], onTrust: false };

/** Without a solution to hold it to, the board stands as it is, but for entries that clash. */
const onTrust = (board: Board, position: Position): Start => {
  const wrong = clashingIn(board, position);
  const settled = Object.fromEntries(Object.entries(position.settled).filter(([name]) => !wrong.includes(name)));
  const known = knownFrom(board, undefined, { ...position, settled });
  return { ...nothingWrong, known, wrong, onTrust: true };
};

const held = (board: Board, solution: Solution, position: Position): Start => ({
  known: knownFrom(board, solution, position),
  wrong: wrongIn(board, solution, position),
  wrongMarks: wrongMarksIn(board, solution, position),
  wrongSpots: wrongSpotsIn(board, solution, position),
  onTrust: false,
});

/** What is known when a beat of the running order begins; its number counts the rules' beats too. */
const knownAt = (plan: Plan, board: Board, beat: number): Knowledge => {
  const before = plan.acts.flatMap(({ beats }) => beats).filter(({ n }) => n < beat);
  const steps = plan.steps.filter(({ n }) => before.some((earlier) => earlier.steps.includes(n)));
  return steps.reduce((known, step) => afterStep(known, board, step), startOf(board));
};

/** The start of the puzzle, or the board that a flag names; `position` is what its file holds. Throws `Stopped`. */
export const startFor = (
  board: Board,
  solution: Solution | undefined,
  position: Position | undefined,
  list: WishList,
  asked: Asked,
): Start => {
  const { at } = asked.flags;
  if (typeof at === "string") {
    const plan = planOf(board, asked, list);
    return { ...nothingWrong, known: knownAt(plan, board, beatIn("--at", at, plan)) };
  }
  if (!position) return { ...nothingWrong, known: startOf(board) };
  return solution ? held(board, solution, position) : onTrust(board, position);
};
