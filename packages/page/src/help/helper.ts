import { type Deduction, finished, limitsOf, listOf, type Plan, prove, runningOrder } from "@solvewright/engine";
import type { Ask, Reply } from "./asks.ts";
import { checked } from "./check.ts";
import { type Helped, helpedOf } from "./helped.ts";
import { nudgeFor } from "./nudge.ts";
import { whyNot } from "./why-not.ts";

/** Answers what the page asks; the first that it is asked is to start. */
export type Helper = (ask: Ask) => Reply;

const planOf = ({ board, about }: Helped): Plan => {
  const limits = (deduction: Deduction) => limitsOf(board, about, deduction);
  return finished(runningOrder(board, (claim) => prove(claim, about), { limits })).plan;
};

const empty = { settled: {}, marks: {}, spots: [] };

const warmUp = (helped: Helped): void => {
  const { board, solution } = helped;
  if (!solution) return;
  nudgeFor(helped, { ask: "nudge", position: empty, eye: [], told: {} }, undefined);
  const cell = board.domains.findIndex((_, at) => !board.givens.has(at));
  const wrong = cell < 0 ? undefined : listOf(board.domains[cell]!).find((digit) => digit !== solution[cell]);
  if (wrong !== undefined) whyNot(helped, empty, board.canvas.names[cell]!, wrong);
};

export const helperFor = (): Helper => {
  let helped: Helped | undefined;
  let plan: Plan | undefined;
  const started = (): Helped => {
    if (!helped) throw new Error("asked before the start");
    return helped;
  };
  return (ask) => {
    switch (ask.ask) {
      case "start":
        helped = helpedOf(ask.puzzle);
        return { reply: "start", sound: helped.solution !== undefined };
      case "warm":
        warmUp(started());
        return { reply: "warm" };
      case "nudge":
        return nudgeFor(started(), ask, plan);
      case "why":
        return whyNot(started(), ask.position, ask.cell, ask.digit);
      case "check":
        return checked(started(), ask.position);
      case "order":
        return { reply: "order", ...(started().solution ? { plan: planOf(started()) } : {}) };
      case "learn":
        plan = ask.plan;
        return { reply: "learn" };
    }
  };
};
