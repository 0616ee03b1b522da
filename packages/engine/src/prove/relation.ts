import { type Digits, listOf } from "../board/digits.ts";
import type { Relation } from "../deduce/step.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Scope } from "../rules/contract.ts";
import { linear, linearNot } from "./linear.ts";
import type { PreparedScope } from "./prepared.ts";
import { pair, pairsThat } from "./table.ts";

type Two = (x: number, y: number) => boolean;
type OfTwo = Exclude<Relation, { readonly sum: unknown }>;

const twos = {
  same: (x, y) => x === y,
  less: (x, y) => x < y,
  "same parity": (x, y) => (x - y) % 2 === 0,
  "different parity": (x, y) => (x - y) % 2 !== 0,
} satisfies Record<string, Two>;

const keyOf = (relation: OfTwo): keyof typeof twos => {
  if ("same" in relation) return "same";
  return "less" in relation ? "less" : `${relation.is} parity`;
};

const opposite =
  (holds: Two): Two =>
  (x, y) =>
    !holds(x, y);
const every = listOf(-1 as Digits);
const tablesOf = (holds: Two) => pairsThat(every, every, holds);
const tables = Object.fromEntries(Object.entries(twos).map(([key, two]) => [key, tablesOf(two)]));
const deniedTables = Object.fromEntries(Object.entries(twos).map(([key, two]) => [key, tablesOf(opposite(two))]));

/** What a relation says of its cells (or, `denied`, the opposite), plainly. */
export const meaningOf = (relation: Relation, cells: readonly Cell[], denied = false): Scope => {
  if ("sum" in relation) {
    const next = (sum: string | number, digit: number): number => (sum as number) + digit;
    return { cells, start: 0, next, ok: (sum) => (sum === relation.is) !== denied };
  }
  const holds = twos[keyOf(relation)];
  return { cells, holds: ([x, y]) => holds(x!, y!) !== denied };
};

/** The same, ready for search. */
export const preparedRelation = (
  relation: Relation,
  cells: readonly Cell[],
  domains: Int32Array,
  denied = false,
): PreparedScope => {
  const scope = meaningOf(relation, cells, denied);
  if ("sum" in relation) {
    const sum = { cells, weights: cells.map(() => 1) };
    return { scope, constraints: [], reading: (denied ? linearNot : linear)(sum, relation.is, domains) };
  }
  const { onward, back } = (denied ? deniedTables : tables)[keyOf(relation)]!;
  return { scope, constraints: [pair(cells, onward, back)] };
};
