import {
  after,
  claimOf,
  type Deduction,
  type Knowledge,
  limitsOf,
  type Part,
  phrase,
  type Step,
  textOf,
} from "@solvewright/engine";
import type { Told } from "./asks.ts";
import type { Helped } from "./helped.ts";

const space: Part = { text: " ", role: "plain" };

const stepOf = ({ board, about }: Helped, deduction: Deduction, n: number, say: string): Step => {
  const claim = claimOf(board, deduction);
  const { technique, level } = deduction;
  return {
    n,
    technique,
    level,
    ...claim,
    because: { ...claim.because, limits: limitsOf(board, about, deduction) },
    say,
    seconds: 0,
  };
};

/** Deductions told in one breath, from the state before the first. */
export const toldOf = (
  helped: Helped,
  deductions: readonly Deduction[],
  before: Knowledge,
  style: "pointing" | "placed",
): Told => {
  const { board } = helped;
  const [parts, placed, steps]: [Part[], string[], Step[]] = [[], [], []];
  let state = before;
  for (const [k, deduction] of deductions.entries()) {
    const line = phrase(deduction, state, board, style, deductions[k - 1]);
    parts.push(...(k > 0 ? [space] : []), ...line);
    placed.push(textOf(style === "placed" ? line : phrase(deduction, state, board, "placed", deductions[k - 1])));
    steps.push(stepOf(helped, deduction, k + 1, textOf(line)));
    state = after(state, board, deduction);
  }
  return { parts, placed: placed.join(" "), steps };
};
