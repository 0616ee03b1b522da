import type { Options } from "../options.ts";
import { clingo } from "../peers/clingo.ts";
import { planTimed, type Timing } from "../proving.ts";
import { type Case, caseIn, filesByFamily } from "../puzzles.ts";
import { inTurns, median, quantile, type Runner, ratio } from "../turns.ts";
import { coldly } from "./coldly.ts";
import { isWanted, type Measure, type Row } from "./measure.ts";

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

const planners = async (cases: readonly Case[], timings: Timing[]): Promise<Runner[]> => {
  const readies = await Promise.all(cases.map((puzzle) => clingo.ready(puzzle)));
  const pass = (): number => {
    timings.splice(0, timings.length, ...cases.map(({ board }) => planTimed(board)));
    return mean(timings.map(({ ms }) => ms));
  };
  const passClingo = async (): Promise<number> => {
    const taken: number[] = [];
    for (const ready of readies) taken.push(await ready!.pass());
    return mean(taken);
  };
  return [
    { name: "plan", pass },
    { name: "clingo", pass: passClingo },
  ];
};

const figuresOf = (timings: readonly Timing[]): Record<string, number> => {
  const steps = timings.reduce((sum, { plan }) => sum + plan.steps.length, 0);
  const ms = timings.reduce((sum, timing) => sum + timing.ms, 0);
  const each = timings.flatMap(({ bursts, plan }) =>
    bursts.map((burst) => (burst * bursts.length) / plan.steps.length),
  );
  return {
    steps: steps / timings.length,
    "steps a second": (steps / ms) * 1000,
    "proofs a step": timings.reduce((sum, { proofs }) => sum + proofs, 0) / steps,
    "step ms median": median(each),
    "step ms 95 in 100": quantile(each, 0.95),
  };
};

async function* rows(options: Options): AsyncGenerator<Row> {
  for (const [name, files] of filesByFamily(options.cases)) {
    if (!isWanted(`plan-${name}`, options) || /^(none|several)$/.test(name)) continue;
    const cold = files.map((file) => coldly("plan", file));
    const timings: Timing[] = [];
    const taken = await inTurns(await planners(files.map(caseIn), timings), options.rounds);
    const [plan, theirs] = [taken.get("plan")!, taken.get("clingo")!];
    const figures = {
      puzzles: files.length,
      "warm ms": median(plan),
      "cold ms": mean(cold),
      "cold most ms": Math.max(...cold),
      "clingo / warm": ratio(plan, theirs),
      ...figuresOf(timings),
    };
    yield { measure: "plan", of: name, figures };
  }
}

export const plan: Measure = {
  name: "plan",
  about:
    "The whole chain of proved steps, the running order and its words; means of a family. Cold: the first work of a new " +
    "process, with reading and judging, its modules loaded. clingo only solves the same puzzle. A step's time is that of " +
    "its digit, shared out among as many steps as the puzzle has a digit on average.",
  rows,
};
