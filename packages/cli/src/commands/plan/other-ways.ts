import {
  type Board,
  definitionOf,
  limitsOf,
  type OtherWay,
  otherWays,
  type Plan,
  type PlanBeat,
  type StepWays,
} from "@solvewright/engine";
import { oneLine } from "@solvewright/press";
import { beatIn } from "../../beat-in.ts";
import type { Asked, ExitCode } from "../../command.ts";
import { carriedOut, unlessStopped, watching } from "../../long-work.ts";
import { stoppedAt } from "../../one-solution.ts";
import type { OtherWaysForm } from "../../schemas/other-ways.ts";
import { watchedProver } from "../../show.ts";
import { paragraph, row } from "./rundown.ts";

/** A value of plain names and numbers as YAML on one line. */
const inYaml = (value: unknown): string => {
  if (Array.isArray(value)) return `[${value.map(inYaml).join(", ")}]`;
  if (typeof value !== "object" || value === null) return String(value);
  return `{ ${Object.entries(value)
    .map(([key, one]) => `${key}: ${inYaml(one)}`)
    .join(", ")} }`;
};

const wayLines = ({ step, placed, wish }: OtherWay, n: number, out: Asked["out"]): string[] => [
  row(n, step.technique.replaceAll("-", " "), `level ${step.level}, ${step.seconds} s`, out),
  ...paragraph(placed, out),
  ...(wish ? [out.colours.dim(`      - ${inYaml(wish)}`)] : []),
];

const stepLines = ({ said, ways }: StepWays, out: Asked["out"]): string[] => [
  "",
  out.colours.bold(oneLine(said)),
  ...(ways.length === 0 ? ["No other single step gives that here."] : []),
  ...ways.flatMap((way, k) => wayLines(way, k + 1, out)),
];

const inWords = ({ n, name, placed }: PlanBeat, found: readonly StepWays[], out: Asked["out"]): string[] => [
  row(n, name, "", out).trimEnd(),
  ...paragraph(placed, out),
  ...found.flatMap((ways) => stepLines(ways, out)),
  ...(found.some(({ ways }) => ways.length > 0) ? ["", "The line below a way, in a list of wishes, takes it."] : []),
];

const formOf = ({ n, name, say }: PlanBeat, found: readonly StepWays[]): OtherWaysForm => ({
  beat: n,
  name,
  say,
  steps: found.map(({ step, said, ways }) => ({
    step: { ...step, n: Number(step.n) },
    said,
    ways: ways.map((way, k) => ({
      n: k + 1,
      step: { ...way.step, n: Number(way.step.n) },
      placed: way.placed,
      ...(way.wish ? { wish: { ...way.wish, wish: "another" as const } } : {}),
    })),
  })),
});

/** Tells the other ways to what a beat concludes; gives back the exit code, 1 where there is none. */
export const tellOtherWays = (plan: Plan, board: Board, flag: string, asked: Asked): ExitCode => {
  const { out, flags } = asked;
  const wanted = beatIn("--other-ways", flag, plan);
  const beat = plan.acts.flatMap(({ beats }) => beats).find(({ n }) => n === wanted)!;
  const about = definitionOf(board);
  const show = (): void => out.progress("Looking for other ways");
  const work = otherWays(board, watchedProver(board, watching(asked, show)), plan, wanted, (step) =>
    limitsOf(board, about, step),
  );
  const found = unlessStopped(() => carriedOut(work, asked, show));
  if (!found) return stoppedAt(asked, "No other ways yet.");
  if (flags.json) out.json(formOf(beat, found));
  else for (const line of inWords(beat, found, out)) out.line(line);
  return found.some(({ ways }) => ways.length > 0) ? 0 : 1;
};
