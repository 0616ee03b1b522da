import type { Run } from "../../command.ts";
import { badUsage } from "../../faults.ts";
import { unlessStopped } from "../../long-work.ts";
import { onlySolution, stoppedAt } from "../../one-solution.ts";
import { boardIn } from "../../puzzle-file.ts";
import { planOf } from "../../show.ts";
import { wishesIn } from "../../wishes-file.ts";
import { tellOtherWays } from "./other-ways.ts";
import { howFar, rundown } from "./rundown.ts";

const highest = 5;

const levelIn = (flag: string | boolean | undefined): number => {
  const level = flag === undefined ? highest : Number(flag);
  if (Number.isInteger(level) && level >= 1 && level <= highest) return level;
  throw badUsage(`--level takes a whole number from 1 to ${highest}, not ${flag}.`, {
    read: `--level ${flag}`,
    right: `a whole number from 1 to ${highest}`,
  });
};

export const run: Run = async (asked) => {
  const { out, words, flags } = asked;
  const level = levelIn(flags.level);
  const list = await wishesIn(asked);
  const board = await boardIn(words[0]!, out);
  const solution = onlySolution(board, asked);
  if (typeof solution === "number") return solution;
  const plan = unlessStopped(() => planOf(board, asked, { level, ...list }));
  if (!plan) return stoppedAt(asked, "Exactly one solution, but no running order yet.", { verdict: "one" });
  if (flags.otherWays !== undefined) return tellOtherWays(plan, board, String(flags.otherWays), asked);
  const lines = plan.solved
    ? rundown(plan, board, out)
    : [...rundown(plan, board, out), "", howFar(plan, board, level)];
  if (flags.json) out.json(plan);
  else for (const line of lines) out.line(line);
  return plan.solved ? 0 : 1;
};
