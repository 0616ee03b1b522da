import {
  type Board,
  cellNamed,
  digitsOf,
  type Knowledge,
  knownFrom,
  type Plan,
  type Solution,
  startOf,
  withPlaced,
  withRemoved,
  wrongIn,
} from "@solvewright/engine";
import { positionIn } from "../../board-file.ts";
import type { Asked } from "../../command.ts";
import { badUsage } from "../../faults.ts";
import { planOf } from "../../show.ts";

/** The board from which a question is asked. */
export interface Start {
  readonly known: Knowledge;
  /** Cells that are settled wrongly there, by name. */
  readonly wrong: readonly string[];
}

const cellsIn = <T>({ canvas }: Board, table: Readonly<Record<string, T>>) =>
  Object.entries(table).map(([name, value]) => [cellNamed(canvas, name)!, value] as const);

/** What is known when a beat of the running order begins; its number counts the rules' beats too. */
const knownAt = (plan: Plan, board: Board, beat: number): Knowledge => {
  const before = plan.acts.flatMap(({ beats }) => beats).filter(({ n }) => n < beat);
  const steps = plan.steps.filter(({ n }) => before.some((earlier) => earlier.steps.includes(n)));
  return steps.reduce(
    (known, { places, removes }) =>
      withRemoved(
        withPlaced(known, board, cellsIn(board, places)),
        cellsIn(board, removes).map(([cell, digits]) => [cell, digitsOf(digits)]),
      ),
    startOf(board),
  );
};

const beatIn = (flag: string, plan: Plan): number => {
  const beats = plan.acts.flatMap((act) => act.beats.map(({ n }) => n));
  const [first, last] = [beats[0] ?? 1, beats.at(-1) ?? 1];
  const beat = Number(flag);
  if (Number.isInteger(beat) && beat >= first && beat <= last) return beat;
  const right = `a beat of the running order, ${first} to ${last}`;
  throw badUsage(`--at takes ${right}, not ${flag}.`, { read: `--at ${flag}`, right });
};

/** The start of the puzzle, or the board that a flag names. Throws `Stopped`. */
export const startFor = async (board: Board, solution: Solution | undefined, asked: Asked): Promise<Start> => {
  const { at, board: file } = asked.flags;
  if (typeof at === "string") {
    const plan = planOf(board, asked);
    return { known: knownAt(plan, board, beatIn(at, plan)), wrong: [] };
  }
  if (typeof file !== "string" || !solution) return { known: startOf(board), wrong: [] };
  const position = await positionIn(file, board);
  return { known: knownFrom(board, solution, position), wrong: wrongIn(board, solution, position) };
};
