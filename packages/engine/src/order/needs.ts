import type { Board } from "../board/board.ts";
import { has, listOf, only, without } from "../board/digits.ts";
import { at, isSettled, type Knowledge, startOf } from "../board/knowledge.ts";
import { keyOfRelated } from "../board/related.ts";
import { after } from "../deduce/after.ts";
import type { Deduction } from "../deduce/deduction.ts";
import type { Cell } from "../puzzle/canvas.ts";

/** Who concluded each relation, settled each cell and took out each digit, by the index of the group. */
interface Suppliers {
  readonly related: Map<string, number>;
  readonly placed: Map<Cell, number>;
  readonly removed: Map<number, number>;
}

const key = (cell: Cell, digit: number): number => cell * 32 + digit;

/** The group that makes a digit's absence known: whoever removed it, else the first whose settled digit bars it. */
const supplierOf = (
  cell: Cell,
  digit: number,
  { placed, removed }: Suppliers,
  knowledge: Knowledge,
  board: Board,
): number | undefined => {
  const remover = removed.get(key(cell, digit));
  if (remover !== undefined) return remover;
  const bars = board.sees[cell]!.filter((other) => isSettled(knowledge, other) && at(knowledge, other) === only(digit));
  if (bars.some((other) => !placed.has(other))) return undefined;
  return bars.length > 0 ? Math.min(...bars.map((other) => placed.get(other)!)) : undefined;
};

const neededBy = (step: Deduction, suppliers: Suppliers, knowledge: Knowledge, board: Board): number[] => {
  const needs: (number | undefined)[] = step.because.relations.map((related) =>
    suppliers.related.get(keyOfRelated(related)),
  );
  for (const [cell, digits] of step.because.facts) {
    if (isSettled(knowledge, cell)) needs.push(suppliers.placed.get(cell));
    else
      for (const digit of listOf(without(board.domains[cell]!, digits)))
        needs.push(supplierOf(cell, digit, suppliers, knowledge, board));
  }
  return needs.filter((need) => need !== undefined);
};

/** By group of steps, the groups (indices) whose digits or removals its facts need. */
export const needsOf = (groups: readonly (readonly Deduction[])[], board: Board): ReadonlySet<number>[] => {
  const suppliers: Suppliers = { related: new Map(), placed: new Map(), removed: new Map() };
  let knowledge = startOf(board);
  return groups.map((group, index) => {
    const needs = new Set<number>();
    for (const step of group) {
      for (const need of neededBy(step, suppliers, knowledge, board)) needs.add(need);
      for (const [cell, digits] of step.removes)
        for (const digit of listOf(digits))
          if (has(at(knowledge, cell), digit) && !suppliers.removed.has(key(cell, digit)))
            suppliers.removed.set(key(cell, digit), index);
      for (const related of step.relates)
        if (!suppliers.related.has(keyOfRelated(related))) suppliers.related.set(keyOfRelated(related), index);
      for (const cell of step.places.keys()) suppliers.placed.set(cell, index);
      knowledge = after(knowledge, board, step);
    }
    needs.delete(index);
    return needs;
  });
};

/** The same with all that those need in turn. */
export const groundsOf = (groups: readonly (readonly Deduction[])[], board: Board): ReadonlySet<number>[] => {
  const grounds: Set<number>[] = [];
  for (const needs of needsOf(groups, board))
    grounds.push(new Set([...needs].flatMap((earlier) => [earlier, ...grounds[earlier]!])));
  return grounds;
};
