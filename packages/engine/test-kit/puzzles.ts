import { accept } from "../src/puzzle/accept.ts";
import type { Problem, Puzzle } from "../src/puzzle/puzzle.ts";
import { read } from "../src/puzzle/read.ts";
import type { Kind } from "../src/rules/contract.ts";

const line = ({ line, column, read, right }: Problem): string =>
  `${line}:${column} read ${read}; right would be ${right}`;

/** The puzzle of a file that must be sound; throws with its problems where it is not. */
export const puzzleOf = (text: string, kinds?: readonly Kind[]): Puzzle => {
  const reading = read(text, kinds ? { kinds } : {});
  const puzzle = accept(reading);
  if (!puzzle) throw new Error(`not a sound puzzle:\n${reading.problems.map(line).join("\n")}\n${text}`);
  return puzzle;
};
