import type { PlanAct, PlanBeat, Step } from "@solvewright/engine";
import type { Deliverable, Show } from "./show.ts";
import { clock } from "./times.ts";

const digitsIn = (steps: readonly Step[]): string =>
  steps.flatMap(({ places }) => Object.entries(places).map(([cell, digit]) => `${digit} in ${cell}`)).join(", ");

const written = ({ writes }: PlanBeat): string =>
  [
    ...Object.entries(writes.cells).map(([cell, digits]) => `${digits.join(" ")} in ${cell}`),
    ...writes.spots.map(({ digit, cells }) => `${digit} in ${cells.join(" or ")}`),
  ].join("; ");

const beatText = (beat: PlanBeat, steps: readonly Step[]): string => {
  const enter = digitsIn(steps);
  const marks = written(beat);
  const doing = [enter && `Enter ${enter}.`, marks && `Mark ${marks}.`].filter(Boolean).join(" ");
  return `**${beat.n}. ${beat.name}** (${Math.round(beat.seconds)} s)\n\n${beat.say}\n${doing ? `\n_${doing}_\n` : ""}`;
};

const actText = ({ title, open, close, beats }: PlanAct, { plan }: Show): string => {
  const ofBeat = (beat: PlanBeat): Step[] => plan.steps.filter(({ n }) => beat.steps.includes(n));
  return [`## ${title}`, open, ...beats.map((beat) => beatText(beat, ofBeat(beat))), close].join("\n\n");
};

/** The lines as they are spoken, with what to enter and mark at each beat. Cells are named by the canvas. */
export const script: Deliverable = {
  name: "script.md",
  purpose: "What to say, beat by beat, with the digits to enter and the marks to write.",
  text: (show) => {
    const { plan, board } = show;
    const rules = plan.rules.lines.map(({ n, title, say }) => `**${n}. ${title}**\n\n${say}\n`);
    const acts = plan.acts.map((act) => actText(act, show));
    return `${[
      `# ${board.puzzle.title}: script`,
      `${clock(plan.seconds)} in all.`,
      "## The rules",
      ...rules,
      ...acts,
    ].join("\n\n")}\n`;
  },
};
