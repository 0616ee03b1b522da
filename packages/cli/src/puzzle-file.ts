import { readFile } from "node:fs/promises";
import { accept, type Board, compile, decode, type Problem, read } from "@solvewright/engine";
import { UsageError } from "./command.ts";

/** What is wrong in a file, all of it. */
export class FileProblems extends Error {
  readonly file: string;
  readonly problems: readonly Problem[];
  constructor(file: string, problems: readonly Problem[]) {
    super(`${problems.length} problems in ${file}`);
    this.file = file;
    this.problems = problems;
  }
}

/** "Line 17, column 5 reads thermometre. Wanted: a rule kind; the nearest is thermometer." */
export const problemLines = ({ file, problems }: FileProblems): string => {
  const lines = problems.map(
    ({ line, column, read, right }) => `Line ${line}, column ${column} reads ${read}. Wanted: ${right}.`,
  );
  return `${file}\n${lines.join("\n")}\nNothing has been changed.\n`;
};

const bytesOf = async (file: string): Promise<Uint8Array> => {
  try {
    return await readFile(file);
  } catch (error) {
    const isMissing = (error as NodeJS.ErrnoException).code === "ENOENT";
    throw new UsageError(
      isMissing ? `There is no file ${file}.` : `${file} can't be read: ${(error as Error).message}.`,
    );
  }
};

export interface Loaded {
  readonly board: Board;
  readonly remarks: readonly Problem[];
}

/** Reads a puzzle file; throws `FileProblems` with everything that is wrong in it. */
export const loadPuzzle = async (file: string): Promise<Loaded> => {
  const text = decode(await bytesOf(file));
  if (typeof text !== "string") throw new FileProblems(file, [text]);
  const reading = read(text);
  const puzzle = accept(reading);
  if (!puzzle) throw new FileProblems(file, reading.problems);
  return { board: compile(puzzle), remarks: reading.remarks };
};
