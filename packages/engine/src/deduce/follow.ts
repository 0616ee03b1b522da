import type { Board } from "../board/board.ts";
import { type Digits, has, isWithin, listOf, only, without } from "../board/digits.ts";
import { at, isRelated, isSettled, type Knowledge, withPlaced, withRelated, withRemoved } from "../board/knowledge.ts";
import { linksBetween } from "../board/links.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Deduction, Technique } from "./deduction.ts";
import { gather } from "./gather.ts";
import type { Judge } from "./judge.ts";
import { gathering } from "./reasons.ts";
import { type Trail, traced, trailOf } from "./trace.ts";

/**
 * Facts that only sight inside the what-if explains are put as what is seen: the digit set on trial (or placed since)
 * and the house or rule through which it is seen, so that a sub-step stands by itself.
 */
const spelledOut = (
  deduction: Deduction,
  outside: Knowledge,
  inside: Knowledge,
  trail: Trail,
  board: Board,
): Deduction => {
  const because = gathering().all({ ...deduction.because, facts: new Map() });
  for (const [cell, digits] of deduction.because.facts) {
    let own: Digits = digits;
    for (const digit of isSettled(inside, cell) ? [] : listOf(without(board.domains[cell]!, digits))) {
      if (!has(at(outside, cell), digit) || trail.removedBy(cell, digit) !== undefined) continue;
      const from = board.sees[cell]!.find((other) => isSettled(inside, other) && at(inside, other) === only(digit));
      if (from === undefined) continue;
      own = (own | only(digit)) as Digits;
      because.fact(from, only(digit)).link(linksBetween(board, cell, from)[0]!);
    }
    if (own !== board.domains[cell]) because.fact(cell, own);
  }
  const { counts } = deduction.because;
  return { ...deduction, because: { ...because.reasons, ...(counts ? { counts } : {}) } };
};

/** How a line of thought is followed: with what, how far, and what ends it. */
export interface Following {
  readonly board: Board;
  readonly ladder: readonly Technique[];
  readonly judge: Judge;
  /** How many rounds of deductions before giving up. */
  readonly rounds: number;
  /** The cell that is on trial, where there is one. */
  readonly tried?: Cell;
  /** The last deduction, once the state has what is looked for. */
  ending(inside: Knowledge, trail: Trail): Deduction | undefined;
  /** The last deduction where a removal leaves a cell nothing (`left` is what it had). */
  emptying?(deduction: Deduction, cell: Cell, left: Digits): Deduction | undefined;
  /** A deduction that leads on where the ladder finds nothing. */
  stuck?(inside: Knowledge): Deduction | undefined;
}

/**
 * Applies everything that is found, round by round, from `start` on (which differs from `outside` by what is assumed),
 * until the ending is reached; then only what that needs, small and proved, in order.
 */
export const follow = (outside: Knowledge, start: Knowledge, following: Following): Deduction[] | undefined => {
  const { board, ladder, judge, tried } = following;
  const trail = trailOf();
  let inside = start;
  const note = (deduction: Deduction): void => trail.add(spelledOut(deduction, outside, inside, trail, board), inside);
  const ended = (last: Deduction): Deduction[] | undefined => {
    note(last);
    const settled = inside.settled.map((is, cell) => is && (outside.settled[cell]! || cell === tried));
    return traced(trail, { possible: inside.possible, settled }, board, judge);
  };
  for (let round = 0; round <= following.rounds; round++) {
    const end = following.ending(inside, trail);
    if (end) return ended(end);
    const found = gather(inside, board, ladder).filter((deduction) => !judge.isRejected(deduction));
    const inner = found.length === 0 ? following.stuck?.(inside) : undefined;
    if (found.length === 0 && !inner) return undefined;
    for (const deduction of inner ? [inner] : found) {
      const fresh = [...deduction.places].filter(
        ([place, digit]) => !isSettled(inside, place) && has(at(inside, place), digit),
      );
      const gone = [...deduction.removes].filter(([place, digits]) => (at(inside, place) & digits) !== 0);
      const related = deduction.relates.filter((relation) => !isRelated(inside, relation));
      if (fresh.length + gone.length + related.length === 0) continue;
      const emptied = gone.find(([place, digits]) => isWithin(at(inside, place), digits));
      const last = emptied && following.emptying?.(deduction, emptied[0], at(inside, emptied[0]));
      if (last) return ended(last);
      note(deduction);
      inside = withRelated(withRemoved(withPlaced(inside, board, fresh), gone), related);
    }
  }
  return undefined;
};
