import type { Asked } from "../../command.ts";
import { type BadInput, badUsage } from "../../faults.ts";
import { printable } from "../../printable.ts";
import { type Address, addressIn } from "./queue/address.ts";

/** What is asked of `assess`: a folder to be assessed here, one to be put on a queue, or work from a queue. */
export type Wanted =
  | { readonly role: "alone"; readonly folder: string; readonly cores: number }
  | { readonly role: "asker"; readonly folder: string; readonly queue: Address }
  | { readonly role: "worker"; readonly queue: Address; readonly cores: number };

const coresIn = ({ flags, threads }: Asked): number => {
  const all = threads?.count ?? 1;
  if (flags.cores === undefined) return all;
  const cores = Number(flags.cores);
  if (Number.isInteger(cores) && cores >= 1) return cores;
  const right = "a whole number from 1";
  throw badUsage(`--cores takes ${right}, not ${printable(String(flags.cores))}.`, {
    read: `--cores ${flags.cores}`,
    right,
  });
};

const amiss = (message: string, read: string, right: string): BadInput => badUsage(message, { read, right });

const workerIn = ({ words, flags }: Asked): void => {
  if (flags.queue === undefined)
    throw amiss("--worker takes its puzzles from a queue. Name one with --queue.", "--worker", "--queue URL beside it");
  if (words.length > 0 || flags.to !== undefined)
    throw amiss("--worker takes its puzzles from the queue: no FOLDER and no --to.", "--worker", "no folder beside it");
};

export const wantedIn = (asked: Asked): Wanted => {
  const { words, flags } = asked;
  const cores = coresIn(asked);
  if (flags.worker) workerIn(asked);
  const queue = flags.queue === undefined ? undefined : addressIn(String(flags.queue));
  if (flags.worker) return { role: "worker", queue: queue!, cores };
  const [folder] = words;
  if (folder === undefined)
    throw amiss("Name the FOLDER whose puzzles are to be assessed.", "no folder", "a folder of puzzle files");
  if (!queue) return { role: "alone", folder, cores };
  if (flags.cores !== undefined)
    throw amiss(
      "--cores is for each --worker to say where there is a --queue.",
      "--cores",
      "no --cores beside --queue",
    );
  return { role: "asker", folder, queue };
};
