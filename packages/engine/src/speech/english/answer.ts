import type { Board } from "../../board/board.ts";
import { digitsOf, listOf } from "../../board/digits.ts";
import type { Knowledge } from "../../board/knowledge.ts";
import { after } from "../../deduce/after.ts";
import type { Why, WhyQuestion } from "../../deduce/why.ts";
import { textOf } from "../line.ts";
import { phrase } from "../phrase.ts";
import { aDigit, capital, counted, digitsSaid } from "./counts.ts";
import { nounsFor } from "./nouns.ts";

/** More links than this are not read out one by one. */
const mostSaid = 3;

/** The answer to "why can't it be this?" or "why is it what it is?" in the placed style. */
export const answerLine = (
  board: Board,
  knowledge: Knowledge,
  { cell, digit }: WhyQuestion,
  { answer, steps }: Why,
): string => {
  const nouns = nounsFor(board, "placed");
  const name = nouns.cell(cell);
  if (answer === "can") return `${capital(name)} can be ${aDigit(digit!)}: nothing rules it out.`;
  if (answer === "unknown") return `Plain reasoning has not settled that from here.`;
  if (steps.length === 0 && digit !== undefined) {
    const grids = board.canvas.grids[cell]!.map((grid) => board.puzzle.grids[grid]!);
    const grid = grids.find(({ digits }) => !digits.includes(digit))!;
    return `${capital(name)} lies in ${grid.called}, which has only ${digitsSaid(digitsOf(grid.digits))}.`;
  }
  if (steps.length === 0)
    return `${capital(name)} is ${aDigit(listOf(knowledge.possible[cell]!)[0]!)}: it is there already.`;
  const lines: string[] = [];
  let state = knowledge;
  for (const step of steps) {
    lines.push(textOf(phrase(step, state, board, "placed")));
    state = after(state, board, step);
  }
  if (lines.length <= mostSaid) return lines.join(" ");
  return `It takes ${counted(lines.length)} steps. ${lines.slice(-2).join(" ")}`;
};
