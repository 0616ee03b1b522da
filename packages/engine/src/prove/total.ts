import { type Digits, listOf } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { RuleDefinition } from "./definition.ts";
import type { PreparedScope } from "./prepared.ts";
import type { Reading } from "./reading.ts";

const sumOf = (digits: readonly number[]): number => digits.reduce((sum, digit) => sum + digit, 0);

/** More states with sums than this are not tried. */
const mostSums = 20_000;

type Sums = Map<number, Set<number>>;

const further = (reading: Reading, place: number, sums: Sums, digits: readonly number[]): Sums => {
  const after: Sums = new Map();
  for (const [state, heres] of sums)
    for (const digit of digits) {
      const next = reading.step(place, state, digit);
      if (next < 0) continue;
      const there = after.get(next) ?? new Set();
      for (const sum of heres) there.add(sum + digit);
      after.set(next, there);
    }
  return after;
};

const sizeOf = (sums: Sums): number => [...sums.values()].reduce((size, set) => size + set.size, 0);

/** Every sum that the cells can have on a way to a good end, or undefined where there are too many to try. */
const sumsRead = (reading: Reading, domains: readonly Digits[]): Set<number> | undefined => {
  let sums: Sums = new Map([[0, new Set([0])]]);
  for (const [place, cell] of reading.cells.entries()) {
    sums = further(reading, place, sums, listOf(domains[cell]!));
    if (sizeOf(sums) > mostSums) return undefined;
  }
  return new Set([...sums].flatMap(([state, ends]) => (reading.isOk(state) ? [...ends] : [])));
};

const rowsOf = (cells: readonly Cell[], domains: readonly Digits[]): number[][] =>
  cells.reduce<number[][]>((rows, cell) => rows.flatMap((row) => listOf(domains[cell]!).map((d) => [...row, d])), [[]]);

const sumsOf = ({ scope, reading, places }: PreparedScope, domains: readonly Digits[]): Set<number> | undefined => {
  if (reading) return sumsRead(reading, domains);
  if (places) return new Set([sumOf(listOf(places.digits as Digits))]);
  if (!("holds" in scope)) return undefined;
  return new Set(rowsOf(scope.cells, domains).filter(scope.holds).map(sumOf));
};

/** What all cells of a rule add up to, worked out from one plain scope that reads them all; undefined where none fixes it. */
export const fixedTotal = (
  { cells, wholeGrid }: RuleDefinition,
  scopes: readonly PreparedScope[],
  domains: readonly Digits[],
): number | undefined => {
  if (wholeGrid) return undefined;
  for (const prepared of scopes) {
    if (prepared.scope.cells.length !== cells.length) continue;
    const sums = sumsOf(prepared, domains);
    if (sums?.size === 1) return [...sums][0];
  }
  return undefined;
};
