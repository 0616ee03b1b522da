import {
  aDigit,
  after,
  capital,
  digitsOf,
  digitsSaid,
  knownFrom,
  nounsFor,
  type Part,
  why,
  wrongIn,
} from "@solvewright/engine";
import type { Position } from "../solve/position.ts";
import type { Reply, Told } from "./asks.ts";
import { cellOf, type Helped } from "./helped.ts";
import { toldOf } from "./told.ts";

type Answer = Extract<Reply, { reply: "why" }>;

/** More links than this are not read out one by one. */
const mostLines = 3;

const plainly = (text: string): Told => ({ parts: [{ text, role: "plain" } satisfies Part], placed: text, steps: [] });

/** The same whether the digit is right or its reason is out of reach: else the answer would give the digit away. */
const openSaid = plainly("Nothing plain rules it out from here.");

const withoutCell = (position: Position, cell: string): Position => {
  const { [cell]: _, ...settled } = position.settled;
  const { [cell]: __, ...marks } = position.marks;
  return { ...position, settled, marks };
};

/** The grid whose digits do not include this one. */
const lackingSaid = ({ board }: Helped, cell: number, digit: number): string => {
  const grid = board.canvas.grids[cell]!.map((index) => board.puzzle.grids[index]!).find(
    ({ digits }) => !digits.includes(digit),
  )!;
  return `It lies in ${grid.called}, which has only ${digitsSaid(digitsOf(grid.digits))}.`;
};

const given = (helped: Helped, cell: number): Told => {
  const digit = helped.board.givens.get(cell)!;
  return plainly(`${capital(nounsFor(helped.board, "placed").cell(cell))} is given: it is ${aDigit(digit)}.`);
};

/** Why a cell can't be that digit, from what the solver has; its own digit and marks are left aside. */
export const whyNot = (helped: Helped, position: Position, name: string, digit: number): Reply => {
  const { board, judge, solution } = helped;
  const cell = cellOf(helped, name);
  const wrong = wrongIn(board, solution, position).filter((other) => other !== name).length;
  const answer = (answer: Answer["answer"], lines: readonly Told[], steps = lines.length): Answer => ({
    reply: "why",
    wrong,
    answer,
    lines,
    steps,
  });
  const own = board.givens.get(cell);
  if (own === digit) return answer("is", [given(helped, cell)]);
  if (own !== undefined) return answer("cannot", [given(helped, cell)]);
  if (solution?.[cell] === digit) return answer("can", [openSaid]);
  const state = knownFrom(board, solution, withoutCell(position, name));
  const found = why(state, board, { cell, digit }, judge);
  if (found.answer === "unknown" || found.answer === "can") return answer("unknown", [openSaid]);
  if (found.steps.length === 0) return answer("cannot", [plainly(lackingSaid(helped, cell, digit))]);
  let before = state;
  const lines = found.steps.map((step) => {
    const told = toldOf(helped, [step], before, "pointing");
    before = after(before, board, step);
    return told;
  });
  return answer("cannot", lines.slice(-mostLines), lines.length);
};
