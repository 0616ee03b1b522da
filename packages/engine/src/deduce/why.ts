import type { Board } from "../board/board.ts";
import { has, only } from "../board/digits.ts";
import { at, digitAt, isSettled, type Knowledge } from "../board/knowledge.ts";
import { linksBetween } from "../board/links.ts";
import { finished } from "../finished.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Deduction, Technique } from "./deduction.ts";
import { follow } from "./follow.ts";
import type { Judge } from "./judge.ts";
import { gathering, removing } from "./reasons.ts";
import { techniques } from "./registry.ts";
import { refuting, whatIf } from "./what-if.ts";

/**
 * `cannot`: the steps end with the digit gone (no steps: its grids have no such digit); `is`: with the cell settled;
 * `can`: the digit is right; no steps.
 */
export interface Why {
  readonly answer: "is" | "cannot" | "can" | "unknown";
  readonly steps: readonly Deduction[];
}

export interface WhyQuestion {
  readonly cell: Cell;
  /** Asked about: why can't it be this? Left out: why is it what it is? */
  readonly digit?: number;
}

/** A settled cell that bars the digit, as a step: the plainest reason there is. */
const visibleBlock = (knowledge: Knowledge, board: Board, cell: Cell, digit: number): Deduction | undefined => {
  const from = board.sees[cell]!.find((other) => digitAt(knowledge, other) === digit);
  if (from === undefined) return undefined;
  const because = gathering()
    .fact(from, only(digit))
    .link(linksBetween(board, cell, from)[0]!);
  return removing("visible-block", 1, new Map([[cell, only(digit)]]), because.reasons);
};

const laddersUpTo = (): Technique[][] =>
  [1, 2, 3].map((level) => techniques.filter((technique) => technique.level <= level));

/** What ends the search for a reason: the digit is gone, or the cell is settled. */
const endingOf =
  (board: Board, { cell, digit }: WhyQuestion) =>
  (inside: Knowledge): Deduction | undefined =>
    digit === undefined || has(at(inside, cell), digit) ? undefined : visibleBlock(inside, board, cell, digit);

const most = 60;

/**
 * Why a cell is, or can't be, a digit, from a state: a visible block first, else the shortest chain that the easiest
 * techniques find, with a what-if as the last resort.
 */
export const why = (knowledge: Knowledge, board: Board, question: WhyQuestion, judge: Judge): Why => {
  const { cell, digit } = question;
  if (isSettled(knowledge, cell) && (digit === undefined || digitAt(knowledge, cell) === digit))
    return { answer: digit === undefined ? "is" : "can", steps: [] };
  if (digit !== undefined && !has(board.domains[cell]!, digit)) return { answer: "cannot", steps: [] };
  const block = digit === undefined ? undefined : visibleBlock(knowledge, board, cell, digit);
  if (block) return { answer: "cannot", steps: [block] };
  for (const ladder of laddersUpTo()) {
    const answer = whyWith(knowledge, board, question, judge, ladder, false);
    if (answer) return answer;
  }
  return (
    whyWith(knowledge, board, question, judge, laddersUpTo().at(-1)!, true) ??
    whyBrutely(knowledge, board, question, judge)
  );
};

/** The one what-if that shows it, however many trials stand within. */
const whyBrutely = (knowledge: Knowledge, board: Board, { cell, digit }: WhyQuestion, judge: Judge): Why => {
  const step = digit === undefined ? undefined : finished(refuting(knowledge, { cell, digit }, { board, judge }));
  return step ? { answer: "cannot", steps: [step] } : { answer: "unknown", steps: [] };
};

const whyWith = (
  knowledge: Knowledge,
  board: Board,
  question: WhyQuestion,
  judge: Judge,
  ladder: readonly Technique[],
  mayTry: boolean,
): Why | undefined => {
  const { cell, digit } = question;
  for (let again = 0; again < 8; again++) {
    let last: Deduction | undefined;
    let isRight = false;
    const steps = follow(knowledge, knowledge, {
      board,
      ladder,
      judge,
      rounds: most,
      ending: (inside, trail) => {
        const gone = endingOf(board, question)(inside);
        if (gone) return gone;
        const placed = trail.placedBy(cell);
        const removed = digit === undefined ? undefined : trail.removedBy(cell, digit);
        if (placed !== undefined && digit !== undefined && digitAt(inside, cell) === digit) isRight = true;
        if (placed !== undefined && (digit === undefined || isRight)) last = trail.found[placed];
        else if (removed !== undefined)
          last = { ...trail.found[removed]!, places: new Map(), removes: new Map([[cell, only(digit!)]]) };
        return last;
      },
      ...(mayTry
        ? { stuck: (inside: Knowledge) => finished(whatIf(inside, { board, judge, level: 5, isShallow: true })) }
        : {}),
    });
    if (isRight) return { answer: "can", steps: [] };
    if (steps) return { answer: digit === undefined ? "is" : "cannot", steps };
    if (!last) return undefined;
  }
  return undefined;
};
