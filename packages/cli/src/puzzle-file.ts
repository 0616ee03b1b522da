import { readFile } from "node:fs/promises";
import { accept, type Board, compile, counted, decode, type Problem, read } from "@solvewright/engine";
import type { Output } from "./command.ts";
import { BadInput, badUsage } from "./faults.ts";
import { printable } from "./printable.ts";

const problemText = ({ line, column, read: found, right }: Problem): string =>
  `Line ${line}, column ${column}: ${found}\n  Right: ${right}.`;

/** Everything that is wrong in a file. */
export const faultyFile = (file: string, problems: readonly Problem[]): BadInput => {
  const head = `${file}: ${problems.length === 1 ? "one fault" : `${counted(problems.length)} faults`}.`;
  const texts = problems.map(problemText).map((text) => text.split("\n").map(printable).join("\n"));
  return new BadInput([printable(head), ...texts].join("\n"), problems);
};

const reasons: Readonly<Record<string, readonly [said: string, right: string]>> = {
  ENOENT: ["is not there", "a file that is there"],
  EISDIR: ["is a folder", "a puzzle file"],
  EACCES: ["may not be read", "a file that you may read"],
};

/** Throws where there is none that can be read. */
export const bytesOf = async (file: string): Promise<Uint8Array> => {
  try {
    return await readFile(file);
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    const [said, right] = reasons[code ?? ""] ?? [`can't be read (${message})`, "a file that can be read"];
    throw badUsage(`${printable(file)} ${said}.`, { read: file, right });
  }
};

/** Reads a puzzle file and notes what it remarks on; throws with everything that is wrong in it. */
export const boardIn = async (file: string, out: Output): Promise<Board> => {
  const text = decode(await bytesOf(file));
  if (typeof text !== "string") throw faultyFile(file, [text]);
  const reading = read(text);
  const puzzle = accept(reading);
  if (!puzzle) throw faultyFile(file, reading.problems);
  for (const { line, read: found, right } of reading.remarks)
    out.note(printable(`Line ${line}: ${found}. Perhaps ${right}.`));
  return compile(puzzle);
};
