import type { Plan } from "@solvewright/engine";
import { clock } from "@solvewright/press";
import { type Command, type ExitCode, UsageError } from "../command.ts";
import { plannedOf, soundnessOf } from "../judged.ts";
import { Stopped } from "../long-work.ts";
import { loadPuzzle } from "../puzzle-file.ts";

const levelOf = (flag: string | boolean | undefined): number => {
  if (flag === undefined) return 5;
  const level = Number(flag);
  if (!Number.isInteger(level) || level < 1 || level > 5)
    throw new UsageError(`--level takes a whole number from 1 to 5, not ${flag}.`);
  return level;
};

const rundown = ({ rules, acts, level, seconds, leftOut }: Plan): string[] => [
  `${clock(seconds)} in all, level ${level}.`,
  ...(leftOut.length > 0 ? [`It leaves out ${leftOut.join(", ")}: nobody has told its meaning.`] : []),
  "",
  `The rules, ${clock(rules.seconds)}`,
  ...rules.lines.map(({ n, title, say }) => `${String(n).padStart(4)}  ${title}: ${say}`),
  ...acts.flatMap(({ title, open, close, beats }) => [
    "",
    `${title}. ${open}`,
    ...beats.map(
      ({ n, name, seconds: long, say }) => `${String(n).padStart(4)}  ${name} (${Math.round(long)} s)\n      ${say}`,
    ),
    close,
  ]),
];

const open = ({ steps }: Plan, cells: number, givens: number): number =>
  cells - givens - steps.filter(({ places }) => Object.keys(places).length > 0).length;

export const run: Command["run"] = async (asked): Promise<ExitCode> => {
  const level = levelOf(asked.flags.level);
  const { board } = await loadPuzzle(asked.words[0]!);
  try {
    const { verdict } = await soundnessOf(board, asked);
    if (verdict !== "one") {
      const found = verdict === "none" ? "None: it has no solution." : "More than one solution.";
      if (asked.flags.json) asked.out.json({ solved: false, verdict });
      else asked.out.line(`${found} No level or time yet. "check" says more.`);
      return 1;
    }
    const { plan } = await plannedOf(board, asked, level);
    if (asked.flags.json) asked.out.json(plan);
    else {
      for (const line of rundown(plan)) asked.out.line(line);
      const left = open(plan, board.canvas.names.length, board.givens.size);
      if (!plan.solved) asked.out.line(`\nReasoning up to level ${level} ends here, with ${left} cells open.`);
    }
    return plan.solved ? 0 : 1;
  } catch (error) {
    if (!(error instanceof Stopped)) throw error;
    asked.out.line("Stopped. No running order yet.");
    return 3;
  }
};
