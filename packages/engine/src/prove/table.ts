import { type Digits, listOf } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Constraint } from "./constraint.ts";

type Holds = (digits: readonly number[]) => boolean;

const union = (rows: Int32Array, of: number, from = 0): number => {
  let all = 0;
  for (let rest = of; rest !== 0; rest &= rest - 1) all |= rows[from + 31 - Math.clz32(rest & -rest)]!;
  return all;
};

const single = (cells: readonly Cell[], allowed: number): Constraint => ({
  cells,
  effort: 0,
  narrow: ({ keep }) => keep(cells[0]!, allowed),
});

/** `onward[x]`: the digits of the second cell that go with x in the first; `back` the other way. */
export const pair = (cells: readonly Cell[], onward: Int32Array, back: Int32Array): Constraint => {
  const [first, second] = cells as [Cell, Cell];
  return {
    cells,
    effort: 0,
    narrow: ({ at, keep }) => keep(second, union(onward, at[first]!)) && keep(first, union(back, at[second]!)),
  };
};

/** `rows[32 * x + y]`: the digits of the third cell that go with x and y in the others. */
const triple = (cells: readonly Cell[], rows: Int32Array): Constraint => {
  const [first, second, third] = cells as [Cell, Cell, Cell];
  return {
    cells,
    effort: 0,
    narrow: ({ at, keep }) => {
      let xs = 0;
      let ys = 0;
      let zs = 0;
      for (let x = 0; x < 32; x++) {
        if ((at[first]! & (1 << x)) === 0) continue;
        for (let y = 0; y < 32; y++) {
          const z = (at[second]! & (1 << y)) === 0 ? 0 : rows[32 * x + y]! & at[third]!;
          if (z === 0) continue;
          xs |= 1 << x;
          ys |= 1 << y;
          zs |= z;
        }
      }
      return xs !== 0 && keep(first, xs) && keep(second, ys) && keep(third, zs);
    },
  };
};

/** Which pairs hold, as digits by digit, both ways. */
export const pairsThat = (xs: readonly number[], ys: readonly number[], holds: (x: number, y: number) => boolean) => {
  const onward = new Int32Array(32);
  const back = new Int32Array(32);
  for (const x of xs)
    for (const y of ys)
      if (holds(x, y)) {
        onward[x]! |= 1 << y;
        back[y]! |= 1 << x;
      }
  return { onward, back };
};

const triplesThat = ([xs, ys, zs]: readonly (readonly number[])[], holds: Holds): Int32Array => {
  const rows = new Int32Array(32 * 32);
  for (const x of xs!) for (const y of ys!) for (const z of zs!) if (holds([x, y, z])) rows[32 * x + y]! |= 1 << z;
  return rows;
};

/** Up to three cells and what is said of their digits, checked for support by trying every combination once. */
export const table = (cells: readonly Cell[], holds: Holds, domains: readonly Digits[]): Constraint => {
  if (cells.length > 3) throw new Error(`a scope that holds of ${cells.length} cells; three are the most`);
  const lists = cells.map((cell) => listOf(domains[cell]!));
  if (cells.length === 1)
    return single(
      cells,
      lists[0]!.reduce((set, x) => (holds([x]) ? set | (1 << x) : set), 0),
    );
  if (cells.length === 3) return triple(cells, triplesThat(lists, holds));
  const { onward, back } = pairsThat(lists[0]!, lists[1]!, (x, y) => holds([x, y]));
  return pair(cells, onward, back);
};
