import { readdir } from "node:fs/promises";
import { join } from "node:path";
import {
  type Board,
  capital,
  counted,
  type Reach,
  type Settling,
  type Solution,
  type Tested,
  testedBy,
} from "@solvewright/engine";
import { settlingsIn } from "../../board-file.ts";
import type { Output } from "../../command.ts";
import { badUsage } from "../../faults.ts";
import { printable } from "../../printable.ts";

const filesIn = async (folder: string): Promise<string[]> => {
  try {
    const names = await readdir(folder);
    return names
      .filter((name) => name.endsWith(".json"))
      .sort()
      .map((name) => join(folder, name));
  } catch {
    throw badUsage(`${printable(folder)} is no folder that can be read.`, {
      read: folder,
      right: "a folder of board files, as the try-it page saves them",
    });
  }
};

/** Holds a reach to the board files of a folder; what is left aside is noted. */
export const testersIn = async (
  folder: string,
  board: Board,
  reach: Reach,
  solution: Solution,
  out: Output,
): Promise<Tested> => {
  const logs: Settling[][] = [];
  let others = 0;
  for (const file of await filesIn(folder)) {
    const log = await settlingsIn(file, board);
    if (log) logs.push(log);
    else others++;
  }
  if (others > 0)
    out.note(`${capital(counted(others))} of the files ${others === 1 ? "belongs" : "belong"} to another puzzle.`);
  return testedBy(board, reach, solution, logs);
};

const correlationSaid = ({ correlation }: Tested): string => {
  if (!correlation) return "No tester has enough pauses to compare.";
  const { mean, error } = correlation;
  const spread =
    error === undefined ? "one tester, so nobody knows how far that carries" : `give or take ${error.toFixed(2)}`;
  return `The guess ranks their pauses as they were to ${mean.toFixed(2)} (1 would be always, 0 no better than chance; ${spread}).`;
};

const fitSaid = ({ fit }: Tested): string => {
  if (!fit) return "Too few testers to fit the weights: it takes three, with forty pauses between them.";
  const { error, errorOfMiddle, better, weights } = fit;
  const held = `A tester left out of the fit is missed by ${error.toFixed(0)} s a pause, and by ${errorOfMiddle.toFixed(0)} s with no guess but the middle pause`;
  if (!better) return `${held}: the fit is no better than that, and is not used.`;
  const { always, thought, looking } = weights;
  return `${held}. Fitted: ${always.toFixed(1)} s for any digit, ${thought.toFixed(1)} s a thought, ${looking.toFixed(1)} s where one step is open.`;
};

/** What the testers' times say, in sentences. */
export const testersSaid = (tested: Tested): string[] =>
  tested.testers === 0
    ? ["No tester's file of this puzzle holds times."]
    : [
        `${capital(counted(tested.testers))} ${tested.testers === 1 ? "tester" : "testers"}, ${tested.pauses} pauses. ${correlationSaid(tested)}`,
        fitSaid(tested),
      ];
