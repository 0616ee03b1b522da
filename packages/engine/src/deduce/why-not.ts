import type { Board } from "../board/board.ts";
import { type Digits, has, isEmpty, listOf, only, without } from "../board/digits.ts";
import { at, digitAt, isSettled, type Knowledge } from "../board/knowledge.ts";
import { type Link, linksBetween } from "../board/links.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Gathering } from "./reasons.ts";

/** A settled cell that keeps its digit from others, and the house or rule through which they see it. */
interface Bar {
  readonly from: Cell;
  readonly link: Link;
}

const barsOf = (knowledge: Knowledge, board: Board, cell: Cell, digit: number): Bar[] => {
  const bars: Bar[] = [];
  for (const from of board.sees[cell]!)
    if (digitAt(knowledge, from) === digit)
      for (const link of linksBetween(board, cell, from)) bars.push({ from, link });
  return bars;
};

const mostWorth = (worth: ReadonlyMap<string, number>): string | undefined => {
  let best: string | undefined;
  for (const [name, value] of worth) if (best === undefined || value > worth.get(best)!) best = name;
  return best;
};

/**
 * One bar for each item (a cell or a digit), using as few names as can be: the name that serves most items first,
 * houses before rules, as they are plainer.
 */
const fewestBars = (open: ReadonlyMap<number, readonly Bar[]>, nameOf: (bar: Bar) => string): Bar[] => {
  const waiting = new Map(open);
  const chosen: Bar[] = [];
  while (waiting.size > 0) {
    const worth = new Map<string, number>();
    for (const bars of waiting.values())
      for (const [k, bar] of bars.entries()) {
        const name = nameOf(bar);
        if (bars.findIndex((other) => nameOf(other) === name) === k)
          worth.set(name, (worth.get(name) ?? (bar.link.kind === "house" ? 0.5 : 0)) + 1);
      }
    const best = mostWorth(worth);
    for (const [item, bars] of waiting) {
      const bar = bars.find((bar) => nameOf(bar) === best);
      if (!bar) continue;
      chosen.push(bar);
      waiting.delete(item);
    }
  }
  return chosen;
};

/**
 * Why none of these cells holds the digit: the settled ones hold another, some see it settled (the fewest such digits
 * that account for all), and of the rest it is known that they lack it. False where one of them may hold it.
 */
export const gatherWhyNowhere = (
  into: Gathering,
  knowledge: Knowledge,
  board: Board,
  cells: readonly Cell[],
  digit: number,
): boolean => {
  const seen = new Map<Cell, Bar[]>();
  for (const cell of cells) {
    if (has(at(knowledge, cell), digit)) return false;
    if (!has(board.domains[cell]!, digit)) continue;
    if (isSettled(knowledge, cell)) {
      into.fact(cell, at(knowledge, cell));
      continue;
    }
    const bars = barsOf(knowledge, board, cell, digit);
    if (bars.length > 0) seen.set(cell, bars);
    else into.fact(cell, without(board.domains[cell]!, only(digit)));
  }
  for (const { from, link } of fewestBars(seen, ({ from, link }) => `${from} ${link.id}`))
    into.fact(from, only(digit)).link(link);
  return true;
};

/** Why the cell holds none of these digits: settled cells that it sees, and of the others that they are known to be gone. */
export const gatherWhyNone = (
  into: Gathering,
  knowledge: Knowledge,
  board: Board,
  cell: Cell,
  digits: Digits,
): void => {
  const seen = new Map<number, Bar[]>();
  let gone = 0 as Digits;
  for (const digit of listOf(digits)) {
    const bars = barsOf(knowledge, board, cell, digit);
    if (bars.length > 0) seen.set(digit, bars);
    else gone = (gone | only(digit)) as Digits;
  }
  for (const { from, link } of fewestBars(seen, ({ link }) => link.id)) into.fact(from, at(knowledge, from)).link(link);
  if (!isEmpty(gone)) into.fact(cell, without(board.domains[cell]!, gone));
};
