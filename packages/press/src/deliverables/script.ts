import { capital, type PlanAct, type PlanBeat } from "@solvewright/engine";
import { creditOf } from "./credit.ts";
import { entriesOf, entriesSaid } from "./entries.ts";
import { lengthOf } from "./script/told-acts.ts";
import type { Deliverable, Show } from "./show.ts";
import { inMarkdown } from "./texts.ts";
import { clock, type Timed, timesOf } from "./times.ts";

type Said = Pick<PlanBeat, "n" | "say" | "seconds" | "pause">;

const line = (name: string, { n, say, seconds, pause }: Said, { starts }: Timed): string =>
  [
    `**${n}. ${inMarkdown(name)}** (${clock(starts.get(n)!)}, ${Math.round(seconds)} s)`,
    ...(pause ? [inMarkdown(pause.say)] : []),
    inMarkdown(say),
  ].join("\n\n");

const beatText = (beat: PlanBeat, show: Show, times: Timed): string => {
  const entries = entriesSaid(entriesOf(show, beat));
  return [line(beat.name, beat, times), ...entries.map((text) => `> ${inMarkdown(text)}`)].join("\n\n");
};

const actText = ({ title, open, close, beats }: PlanAct, show: Show, times: Timed): string[] => [
  `## ${inMarkdown(title)}`,
  inMarkdown(open),
  ...beats.map((beat) => beatText(beat, show, times)),
  inMarkdown(close),
];

/** The lines as they are spoken, act by act, and under each what to enter and mark. */
export const script: Deliverable = {
  name: "script.md",
  purpose: "What to say, beat by beat, and which digits and marks go in.",
  needs: [],
  make: (show) => {
    const { plan, board } = show;
    const times = timesOf(plan);
    return `${[
      `# ${inMarkdown(board.puzzle.title)}: the script`,
      `${inMarkdown(capital(creditOf(board.puzzle, show.isChanged)))}. ${lengthOf(show)}`,
      "Places are named row and column, each grid counting its own from the top left.",
      "## The rules",
      ...plan.rules.lines.map((rule) => line(rule.title, rule, times)),
      ...plan.acts.flatMap((act) => actText(act, show, times)),
    ].join("\n\n")}\n`;
  },
};
