import type { Board } from "../../board/board.ts";
import type { Deduction } from "../../deduce/deduction.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { wordsIn } from "../line.ts";
import { capital, counted } from "./counts.ts";
import { nounsFor } from "./nouns.ts";

/** Why a presenter's wish is not fulfilled, a sentence each. */

const cellSaid = (board: Board, cell: Cell): string => nounsFor(board, "placed").cell(cell);
const gridSaid = (board: Board, grid: number): string => board.puzzle.grids[grid]!.called;
const plainly = (technique: string): string => technique.replaceAll("-", " ");

export const noSuchCell = (name: string): string => `There is no cell ${name}.`;
export const noSuchGrid = (id: string): string => `There is no grid called ${id}.`;
export const noSuchRule = (id: string): string => `There is no clue ${id} any more.`;
export const isGiven = (board: Board, cell: Cell): string => `${capital(cellSaid(board, cell))} is given.`;

export const notReached = (board: Board, cell: Cell): string =>
  `The solve does not get as far as ${cellSaid(board, cell)}.`;

export const notFirst = (board: Board, cell: Cell, before: number, beat: number): string =>
  `${capital(cellSaid(board, cell))} stands on ${counted(before)} ${before === 1 ? "digit" : "digits"} before it, so it comes at beat ${beat}.`;

export const ruleUnused = (board: Board, rule: string): string =>
  `No step of this solve needs ${nounsFor(board, "placed").rule(rule)}.`;

export const techniqueUnused = (technique: string): string =>
  `No step of this solve is a ${plainly(technique)}: easier steps do its work.`;

export const entered = (board: Board, grid: number, beat: number): string =>
  `Nothing else led on, so ${gridSaid(board, grid)} had to be entered at beat ${beat}.`;

export const notInCorner = (board: Board, grid: number, corner: string): string =>
  `No digit of the ${corner.replace("-", " ")} corner of ${gridSaid(board, grid)} can be found first, so it starts as near as it can.`;

export const stillUsed = (board: Board, step: Deduction): string => {
  const [cell] = [...step.places.keys(), ...step.removes.keys()];
  return `The step at ${cellSaid(board, cell!)} is still there: its reasons, made small, are these again.`;
};

/** A cell whose digit, or digits' removal, was to be reached in one way. */
export const notThatWay = (board: Board, step: Deduction): string => {
  const [cell] = [...step.places.keys(), ...step.removes.keys()];
  return `By the time that ${cellSaid(board, cell!)} comes, its reasons made small are others.`;
};

export const notNeeded = (board: Board, cell: Cell): string =>
  `No step of this order takes those digits out of ${cellSaid(board, cell)}: it does without.`;

/** What a wish keeps the reasoning to: a level at most, one way alone, or to do without something. */
export type Under = { readonly most: number } | "that way alone" | "without that";

const underSaid = (under: Under): string => {
  if (typeof under === "object") return `Up to level ${under.most}`;
  return under === "that way alone" ? "By that way alone" : "Without that";
};

export const stopsShort = (settled: number, of: number, under: Under): string =>
  settled === 0
    ? `${underSaid(under)}, no digit can be found at all.`
    : `${underSaid(under)}, ${counted(settled)} of ${counted(of)} digits can be found and no more.`;

const mostWords = 40;
export const tooLong = (say: string): string | undefined => {
  const words = wordsIn(say);
  return words > mostWords ? `These ${words} words are more than one breath, which holds ${mostWords}.` : undefined;
};
