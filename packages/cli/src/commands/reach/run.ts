import { dirname } from "node:path";
import {
  type Board,
  counted,
  pausesSaid,
  type Reach,
  reaching,
  reachLines,
  reguessed,
  type Tested,
  viewersSaid,
} from "@solvewright/engine";
import { oneLine, reachStrip } from "@solvewright/press";
import { besleyCss } from "@solvewright/press/files";
import type { Asked, Run } from "../../command.ts";
import { carriedOut, unlessStopped, watching } from "../../long-work.ts";
import { onlySolution, stoppedAt } from "../../one-solution.ts";
import { printable } from "../../printable.ts";
import { boardIn } from "../../puzzle-file.ts";
import type { ReachForm } from "../../schemas/reach.ts";
import { watchedProver } from "../../show.ts";
import { toDisk } from "../../to-disk.ts";
import { wrapped } from "../../wrapped.ts";
import { writeWhole } from "../../write-whole.ts";
import { testersIn, testersSaid } from "./testers.ts";

const stages = { viewers: "Solving as each level of viewer", measures: "Measuring" };

/** Trials of a digit in all; what that leaves out is said. */
const trials = 3_000;

const reachOf = (board: Board, asked: Asked): Reach =>
  carriedOut(
    reaching(board, watchedProver(board, watching(asked)), { measures: { trials } }),
    asked,
    ({ stage, share }) => asked.out.progress(stages[stage], `${Math.round(share * 100)} %`),
  );

const hundredths = (number: number): number => Math.round(number * 100) / 100;

/** As others may build on it (schemas/reach.ts). */
const machineForm = (board: Board, reach: Reach, tested: Tested | undefined): ReachForm => ({
  open: reach.open,
  viewers: reach.viewers.map((viewer) => ({ ...viewer, called: viewersSaid(viewer.level) })),
  way: reach.way.map(({ cell, effort, pause, ...rest }) => ({
    cell: board.canvas.names[cell]!,
    ...rest,
    effort: hundredths(effort),
    pause: hundredths(pause),
  })),
  pauses: [...reach.pauses],
  effort: hundredths(reach.effort),
  measures: {
    ...reach.measures,
    dependency: hundredths(reach.measures.dependency),
    dependencyError: hundredths(reach.measures.dependencyError),
    refutation: hundredths(reach.measures.refutation),
    refutationError: hundredths(reach.measures.refutationError),
  },
  ...(tested ? { testers: tested } : {}),
  say: reachLines(board, reach).join(" "),
});

const measuresSaid = ({ measures, effort }: Reach): string[] => {
  const { first, dependency, refutation, whole, runs } = measures;
  return [
    `Effort ${effort.toFixed(0)} in all. Easy steps open at the start: ${first}; over the first twenty: ${dependency.toFixed(1)} (dependency).`,
    whole
      ? `Steps of contradictions where easy steps run out: ${refutation.toFixed(1)} (refutation), over ${counted(runs)} ${runs === 1 ? "run" : "runs"}.`
      : "Easy steps and the trial of one digit at a time do not get through, so refutation is not known.",
    "These compare puzzles with one another; published figures exist for classic puzzles alone.",
  ];
};

const inWords = (board: Board, reach: Reach, tested: Tested | undefined, width: number): string[] =>
  [
    ...reachLines(board, reach),
    "",
    ...(reach.pauses.length > 0 ? ["Likely pauses, the longest first:"] : []),
    ...pausesSaid(board, reach).map((line, k) => `  ${k + 1}  ${line}.`),
    "",
    ...measuresSaid(reach),
    ...(tested ? ["", ...testersSaid(tested)] : []),
  ].flatMap((line) => (line === "" ? [""] : wrapped(printable(line), Math.min(width, 88), "")));

const drawn = (file: string, board: Board, reach: Reach, isDark: boolean): Promise<void> => {
  const svg = reachStrip(reach, {
    theme: isDark ? "dark" : "light",
    fontCss: besleyCss(),
    title: oneLine(board.puzzle.title),
    said: pausesSaid(board, reach),
  });
  return toDisk(dirname(file), () => writeWhole(file, svg));
};

export const run: Run = async (asked) => {
  const { out, words, flags } = asked;
  const board = await boardIn(words[0]!, out);
  const solution = onlySolution(board, asked);
  if (typeof solution === "number") return solution;
  const made = unlessStopped(() => reachOf(board, asked));
  if (!made) return stoppedAt(asked, "Exactly one solution, but not who gets through yet.", { verdict: "one" });
  const tested =
    typeof flags.testers === "string" ? await testersIn(flags.testers, board, made, solution, out) : undefined;
  const reach = tested?.fit?.better ? reguessed(made, tested.fit.weights) : made;
  if (flags.json) out.json(machineForm(board, reach, tested));
  else for (const line of inWords(board, reach, tested, out.width)) out.line(line);
  if (typeof flags.picture === "string") await drawn(flags.picture, board, reach, flags.dark === true);
  return reach.viewers.some(({ through }) => through) ? 0 : 1;
};
