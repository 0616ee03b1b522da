import { type Board, counted, findingClash, listed, type Soundness, type Worths, weighing } from "@solvewright/engine";
import type { Asked, Command, ExitCode } from "../command.ts";
import { namedDigits, soundnessOf } from "../judged.ts";
import { carriedOut, Stopped } from "../long-work.ts";
import { loadPuzzle } from "../puzzle-file.ts";

interface Finding {
  readonly soundness: Soundness;
  readonly worths?: Worths;
  readonly conflict?: {
    readonly houses: readonly string[];
    readonly rules: readonly string[];
    readonly givens: readonly string[];
  };
  readonly leftOut: readonly string[];
  readonly ms: number;
}

const jsonOf = (board: Board, { soundness, worths, conflict, leftOut, ms }: Finding) => ({
  verdict: soundness.verdict,
  solutions: soundness.solutions.map((solution) => namedDigits(board, solution)),
  differ: soundness.differ.map((cell) => board.canvas.names[cell]!),
  ...(conflict ? { conflict } : {}),
  ...(worths
    ? {
        rules: [...worths.rules].map(([id, worth]) => ({ id, worth })),
        givens: [...worths.givens].map(([cell, worth]) => ({ cell: board.canvas.names[cell]!, worth })),
      }
    : {}),
  leftOut,
  ms,
});

const spare = (board: Board, { rules, givens }: Worths): string => {
  const ids = [...rules].filter(([, worth]) => worth === "redundant").map(([id]) => id);
  const cells = [...givens]
    .filter(([, worth]) => worth === "redundant")
    .map(([cell]) => `the given in ${board.canvas.names[cell]}`);
  const all = [...ids, ...cells];
  if (all.length === 0) return "Every rule and every given is needed.";
  return `It would have one solution without any one of these: ${listed(all)}.`;
};

const clashSaid = ({ houses, rules, givens }: NonNullable<Finding["conflict"]>): string =>
  `None. These can't all hold: ${listed([...rules, ...houses, ...givens.map((cell) => `the given in ${cell}`)])}. Without any one of them the rest can.`;

const sentences = (board: Board, { soundness, worths, conflict, leftOut }: Finding): string[] => {
  const lines: string[] = [];
  if (soundness.verdict === "one") lines.push("One. Exactly one solution.");
  if (soundness.verdict === "several") {
    const many = soundness.differ.length;
    const where = soundness.differ.map((cell) => board.canvas.names[cell]!);
    lines.push(
      `More than one. These two agree everywhere but in ${counted(many)} ${many === 1 ? "cell" : "cells"}: ${listed(where)}.`,
    );
  }
  if (conflict) lines.push(clashSaid(conflict));
  if (worths) lines.push(spare(board, worths));
  if (leftOut.length > 0) lines.push(`This leaves out ${listed(leftOut)}: nobody has told its meaning.`);
  return lines;
};

const conflictOf = async (board: Board, asked: Asked): Promise<NonNullable<Finding["conflict"]>> => {
  const { houses, rules, givens } = await carriedOut(findingClash(board), asked.stopped, () =>
    asked.out.progress("Looking for the smallest clash"),
  );
  return { houses, rules, givens: givens.map((cell) => board.canvas.names[cell]!) };
};

const findingOf = async (board: Board, asked: Asked): Promise<Finding> => {
  const start = performance.now();
  const soundness = await soundnessOf(board, asked);
  const ms = Math.round((performance.now() - start) * 10) / 10;
  const leftOut = board.rules.filter((rule) => rule.leftOut).map(({ id }) => id);
  if (soundness.verdict === "none") return { soundness, conflict: await conflictOf(board, asked), leftOut, ms };
  if (soundness.verdict === "several") return { soundness, leftOut, ms };
  const [solution] = soundness.solutions;
  const worths = await carriedOut(weighing(board, solution!), asked.stopped, () =>
    asked.out.progress("Weighing rules and givens"),
  );
  return { soundness, worths, leftOut, ms };
};

export const run: Command["run"] = async (asked): Promise<ExitCode> => {
  const { board, remarks } = await loadPuzzle(asked.words[0]!);
  try {
    const finding = await findingOf(board, asked);
    if (asked.flags.json) asked.out.json(jsonOf(board, finding));
    else {
      for (const { line, read, right } of remarks) asked.out.line(`Line ${line}: ${read}. Perhaps ${right}.`);
      for (const line of sentences(board, finding)) asked.out.line(line);
    }
    return finding.soundness.verdict === "one" ? 0 : 1;
  } catch (error) {
    if (!(error instanceof Stopped)) throw error;
    asked.out.line("Stopped. No verdict yet.");
    return 3;
  }
};
