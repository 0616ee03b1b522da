import { decode, readWishes, type WishList } from "@solvewright/engine";
import type { Asked, Flag } from "./command.ts";
import { bytesOf, faultyFile } from "./puzzle-file.ts";

export const wishes: Flag = {
  name: "--wishes <file>",
  text: "what you ask of the order, and what the audience has met",
};

/** What `--wishes` asks of the running order; nothing where it is left out. Throws with all that is wrong in the file. */
export const wishesIn = async ({ flags }: Asked): Promise<WishList> => {
  if (typeof flags.wishes !== "string") return { wishes: [], met: [] };
  const text = decode(await bytesOf(flags.wishes));
  if (typeof text !== "string") throw faultyFile(flags.wishes, [text]);
  const { problems, ...list } = readWishes(text);
  if (problems.length > 0) throw faultyFile(flags.wishes, problems);
  return list;
};
