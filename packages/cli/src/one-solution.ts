import type { Board, Solution } from "@solvewright/engine";
import type { Asked, ExitCode } from "./command.ts";
import { unlessStopped } from "./long-work.ts";
import { soundnessOf } from "./show.ts";

const refusals = {
  several: "More than one solution. No level or time yet.",
  none: "None: it has no solution. No level or time yet.",
};

/** Says what is known so far and that there is no more; gives back the exit code. */
export const stoppedAt = ({ out, flags }: Asked, known: string, forMachines: object = {}): ExitCode => {
  if (flags.json) out.json({ ...forMachines, stopped: true });
  else out.line(`Stopped. ${known}`);
  return 3;
};

/** The board's only solution; where there is none or another, that is said and the exit code comes back. */
export const onlySolution = (board: Board, asked: Asked): Solution | ExitCode => {
  const { out, flags } = asked;
  const soundness = unlessStopped(() => soundnessOf(board, asked));
  if (!soundness) return stoppedAt(asked, "No verdict yet.");
  const { verdict, solutions } = soundness;
  if (verdict === "one") return solutions[0]!;
  if (flags.json) out.json({ solved: false, verdict });
  else out.line(`${refusals[verdict]} Ask check where they differ or clash.`);
  return 1;
};
