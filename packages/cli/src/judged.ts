import {
  type Board,
  definitionOf,
  judging,
  limitsOf,
  type Planned,
  prove,
  runningOrder,
  type Solution,
  type Soundness,
} from "@solvewright/engine";
import type { Asked } from "./command.ts";
import { carriedOut } from "./long-work.ts";

export const soundnessOf = (board: Board, { stopped, out }: Asked): Promise<Soundness> =>
  carriedOut(judging(board), stopped, ({ nodes }) => out.progress(`Looking for solutions: ${nodes} places looked at`));

/** By cell name. */
export const namedDigits = (board: Board, solution: Solution): Record<string, number> =>
  Object.fromEntries(board.canvas.names.map((name, cell) => [name, solution[cell]!]));

const stages = { reasoning: "Reasoning", ordering: "Putting it in order", words: "Finding words" };

/** The running order of a board that has one solution; `level` is the highest wanted. */
export const plannedOf = (board: Board, { stopped, out }: Asked, level = 5): Promise<Planned> => {
  const about = definitionOf(board);
  const work = runningOrder(board, (claim) => prove(claim, about), {
    level,
    limits: (deduction) => limitsOf(board, about, deduction),
  });
  return carriedOut(work, stopped, ({ stage, share }) =>
    out.progress(`${stages[stage]}: ${Math.round(share * 100)} %`),
  );
};
