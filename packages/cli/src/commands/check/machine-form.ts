import {
  type Board,
  type Clash,
  type Extent,
  fileForm,
  type Mend,
  namedDigits,
  type Wording,
  type Worths,
} from "@solvewright/engine";
import type { CheckForm } from "../../schemas/check.ts";
import type { Finding } from "./finding.ts";

const conflictIn = ({ canvas }: Board, { houses, rules, givens }: Clash): Pick<CheckForm, "conflict"> => ({
  conflict: { houses: [...houses], rules: [...rules], givens: givens.map((cell) => canvas.names[cell]!) },
});

const worthIn = ({ canvas }: Board, { rules, givens }: Worths): Pick<CheckForm, "rules" | "givens"> => ({
  rules: [...rules].map(([id, worth]) => ({ id, worth })),
  givens: [...givens].map(([cell, worth]) => ({ cell: canvas.names[cell]!, worth })),
});

const extentIn = ({ canvas }: Board, { count, exact, open }: Extent): Pick<CheckForm, "count" | "open"> => ({
  count: { solutions: count, exact },
  open: open.map((cell) => canvas.names[cell]!),
});

const mendsIn = (board: Board, mends: readonly Mend[]): Pick<CheckForm, "mends"> => ({
  mends: mends.map((mend) => {
    const [first, ...more] = fileForm(board, mend);
    return { change: mend.change, what: more.length > 0 ? [first!, ...more] : first!, verdict: mend.verdict };
  }),
});

const wordingIn = ({ unsaid, onlySaid }: Wording): Pick<CheckForm, "wording"> => ({
  wording: {
    unsaid: unsaid.map(({ rule, ids }) => ({ rule, ids: [...ids] })),
    onlySaid: onlySaid.map(({ rule }) => rule),
  },
});

/** A finding as others may build on it (schemas/check.ts). */
export const machineForm = (board: Board, finding: Finding): CheckForm => {
  const { soundness, worths, assumptions, clash, extent, mends, wording, isStopped, ms } = finding;
  return {
    ...(soundness
      ? {
          verdict: soundness.verdict,
          solutions: soundness.solutions.map((solution) => namedDigits(board, solution)),
          differ: soundness.differ.map((cell) => board.canvas.names[cell]!),
        }
      : {}),
    ...(extent ? extentIn(board, extent) : {}),
    ...(clash ? conflictIn(board, clash) : {}),
    ...(worths ? worthIn(board, worths) : {}),
    leftOut: board.rules.filter(({ leftOut }) => leftOut).map(({ id }) => id),
    ...(assumptions ? { assumptions: assumptions.map((assumption) => ({ ...assumption })) } : {}),
    ...(mends ? mendsIn(board, mends) : {}),
    ...(wording ? wordingIn(wording) : {}),
    ms,
    ...(isStopped ? { stopped: true } : {}),
  };
};
