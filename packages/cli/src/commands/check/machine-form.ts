import type { Board, Clash, Worths } from "@solvewright/engine";
import type { CheckForm } from "../../schemas/check.ts";
import { namedDigits } from "../../show.ts";
import type { Finding } from "./finding.ts";

const conflictIn = ({ canvas }: Board, { houses, rules, givens }: Clash): Pick<CheckForm, "conflict"> => ({
  conflict: { houses: [...houses], rules: [...rules], givens: givens.map((cell) => canvas.names[cell]!) },
});

const worthIn = ({ canvas }: Board, { rules, givens }: Worths): Pick<CheckForm, "rules" | "givens"> => ({
  rules: [...rules].map(([id, worth]) => ({ id, worth })),
  givens: [...givens].map(([cell, worth]) => ({ cell: canvas.names[cell]!, worth })),
});

/** A finding as others may build on it (schemas/check.ts). */
export const machineForm = (board: Board, { soundness, worths, clash, isStopped, ms }: Finding): CheckForm => ({
  ...(soundness
    ? {
        verdict: soundness.verdict,
        solutions: soundness.solutions.map((solution) => namedDigits(board, solution)),
        differ: soundness.differ.map((cell) => board.canvas.names[cell]!),
      }
    : {}),
  ...(clash ? conflictIn(board, clash) : {}),
  ...(worths ? worthIn(board, worths) : {}),
  leftOut: board.rules.filter(({ leftOut }) => leftOut).map(({ id }) => id),
  ms,
  ...(isStopped ? { stopped: true } : {}),
});
