import type { Board } from "../src/board/board.ts";
import type { Plan, PlanBeat } from "../src/order/plan.ts";
import { fingerprint } from "../src/puzzle/fingerprint.ts";
import type { Take, TakeEntry } from "../src/take/take.ts";
import { randomFrom } from "./random.ts";

/** A take, and what a witness would say of it; times in seconds of the take. */
export interface Performed {
  readonly take: Take;
  /** When each cell got the digit that it kept, by its name. */
  readonly settled: ReadonlyMap<string, number>;
  /** When each act's talk began, the rules' first, and when the last of its digits was in. */
  readonly acts: readonly { readonly from: number; readonly to: number }[];
}

const digitsOf = (plan: Plan, beat: PlanBeat): [string, number][] =>
  plan.steps.filter(({ n }) => beat.steps.includes(n)).flatMap(({ places }) => Object.entries(places));

/**
 * A presenter who goes by a running order at a pace of their own, and errs: enters a wrong digit and takes it out, enters
 * a right one twice over, forgets one until the act's end, marks and clears, and falls silent.
 */
export const performed = (plan: Plan, board: Board, seed: number): Performed => {
  const random = randomFrom(seed);
  const tenths = (most: number): number => random.below(most * 10) / 10;
  const entries: TakeEntry[] = [];
  const settled = new Map<string, number>();
  const slate = 1 + tenths(8);
  const pace = 0.7 + tenths(1);
  let now = slate;
  const after = (seconds: number): number => {
    now = Math.round((now + seconds) * 100) / 100;
    return now;
  };
  const settle = (cell: string, digit: number): void => {
    if (random.below(8) === 0) {
      entries.push({ at: after(0.8), cell, settle: digit === 1 ? 2 : digit - 1 });
      entries.push({ at: after(1.5), cell, clear: true });
    }
    const at = after(0.6);
    entries.push({ at, cell, settle: digit });
    settled.set(cell, at);
    if (random.below(12) === 0) entries.push({ at: after(0.3), cell, settle: digit });
  };
  const perform = (beat: PlanBeat, forgotten: [string, number][]): void => {
    after(beat.seconds * pace * (0.8 + tenths(1) / 2));
    for (const [cell, digits] of Object.entries(beat.writes.cells))
      entries.push({ at: after(0.4), cell, marks: digits });
    for (const [cell, digit] of digitsOf(plan, beat))
      if (random.below(15) === 0) forgotten.push([cell, digit]);
      else settle(cell, digit);
    if (random.below(10) === 0) after(tenths(15));
  };
  const acts: { from: number; to: number }[] = [{ from: now, to: after(plan.rules.seconds * pace) }];
  for (const { beats } of plan.acts) {
    const from = now;
    const forgotten: [string, number][] = [];
    for (const beat of beats) perform(beat, forgotten);
    for (const [cell, digit] of forgotten) settle(cell, digit);
    const cells = beats.flatMap((beat) => digitsOf(plan, beat)).map(([cell]) => cell);
    acts.push({ from, to: Math.max(from, ...cells.map((cell) => settled.get(cell)!)) });
  }
  const ends = after(2 + tenths(10));
  return { take: { puzzle: fingerprint(board.puzzle), slate, ends, entries }, settled, acts };
};
