import { type Problem, readPlainLine } from "@solvewright/engine";
import { bytesOf, faultyFile } from "../../puzzle-file.ts";

/** A line of givens and its number in the file, from 1. */
export interface NumberedLine {
  readonly number: number;
  readonly text: string;
}

/** A file with more faults than this has its first ones told. */
const mostProblems = 100;

/** The givens end at the first blank: a solution or a name may stand behind them. */
const numbered = (text: string): NumberedLine[] =>
  text
    .split(/\r?\n/)
    .map((line, k) => ({ number: k + 1, text: /^\S*/.exec(line)![0] }))
    .filter(({ text: line }) => line !== "" && !line.startsWith("#"));

const problemIn = ({ number, text }: NumberedLine): Problem[] => {
  const line = readPlainLine(text);
  if (!("read" in line)) return [];
  return [{ line: number, column: Number(line.at?.[0] ?? 0) + 1, read: line.read, right: line.right, path: "" }];
};

const nothing: Problem = {
  line: 1,
  column: 1,
  read: "a file without a line of givens",
  right: "a puzzle a line, 81 characters, . or 0 where nothing is given",
  path: "",
};

/** The lines of givens of a file, empty ones and those that begin with # left out; throws with all that is wrong in it. */
export const linesIn = async (file: string): Promise<readonly NumberedLine[]> => {
  const lines = numbered(new TextDecoder().decode(await bytesOf(file)));
  const problems = lines.length > 0 ? lines.flatMap(problemIn) : [nothing];
  if (problems.length > 0) throw faultyFile(file, problems.slice(0, mostProblems));
  return lines;
};
