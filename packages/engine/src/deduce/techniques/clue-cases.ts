import type { Board } from "../../board/board.ts";
import { type Digits, isEmpty, isOne, min, without } from "../../board/digits.ts";
import { at, isSettled, type Knowledge } from "../../board/knowledge.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { type ClueUnit, clueUnits } from "../clue-units.ts";
import type { Deduction, Technique } from "../deduction.ts";
import { gathering, placing, removing } from "../reasons.ts";

interface Outcome {
  readonly before: readonly Digits[];
  readonly left: readonly Digits[] | undefined;
}

/** What a unit said last: nothing is worked out again while its cells stay as they were. */
const lastOutcome = new WeakMap<ClueUnit, Outcome>();

const isSame = (a: readonly Digits[], b: readonly Digits[]): boolean => a.every((digits, k) => digits === b[k]);

/** What the clue leaves of its cells' digits, with the houses that they share. */
export const leftBy = (unit: ClueUnit, knowledge: Knowledge): readonly Digits[] | undefined => {
  const before = unit.cells.map((cell) => at(knowledge, cell));
  const last = lastOutcome.get(unit);
  if (last && isSame(last.before, before)) return last.left;
  const left = unit.inHouses.possible(before);
  lastOutcome.set(unit, { before, left });
  return left;
};

/** The clue, the houses that its cells share, and whatever is known of those cells. */
export const reasonsOf = (unit: ClueUnit, knowledge: Knowledge, board: Board) => {
  const because = gathering().rule(unit.rule);
  for (const house of unit.houses) because.house(house);
  for (const cell of unit.cells) if (at(knowledge, cell) !== board.domains[cell]) because.fact(cell, at(knowledge, cell));
  return because;
};

/** Settled cells of a clue that leave one digit for another of its cells: nothing of the open ones need be known. */
export const clueForces: Technique = {
  name: "clue-forces",
  level: 1,
  *find(knowledge, board) {
    for (const unit of clueUnits(board)) {
      const open = unit.cells.filter((cell) => !isSettled(knowledge, cell));
      if (open.length === 0) continue;
      const left = leftBy(unit, knowledge);
      if (!left || left.some(isEmpty)) continue;
      for (const cell of open) {
        const digits = left[unit.cells.indexOf(cell)]!;
        if (!isOne(digits) || (open.length > 1 && !isForcedBySettled(unit, knowledge, board, cell))) continue;
        yield placing("clue-forces", 1, cell, min(digits), reasonsOf(unit, knowledge, board).reasons);
      }
    }
  },
};

const isForcedBySettled = (unit: ClueUnit, knowledge: Knowledge, board: Board, cell: Cell): boolean => {
  const start = unit.cells.map((other) => (isSettled(knowledge, other) ? at(knowledge, other) : board.domains[other]!));
  const left = unit.alone.possible(start);
  return left !== undefined && isOne(left[unit.cells.indexOf(cell)]!);
};

const removesOf = (unit: ClueUnit, knowledge: Knowledge, left: readonly Digits[]): Map<Cell, Digits> =>
  new Map(
    unit.cells.flatMap((cell, k): [Cell, Digits][] => {
      const gone = without(at(knowledge, cell), left[k]!);
      return isEmpty(gone) || isSettled(knowledge, cell) ? [] : [[cell, gone]];
    }),
  );

/** All ways to meet one clue, with the houses that its cells share, agree: digits that no way uses are gone. */
export const clueCases: Technique = {
  name: "clue-cases",
  level: 2,
  *find(knowledge, board): Iterable<Deduction> {
    for (const unit of clueUnits(board)) {
      const left = leftBy(unit, knowledge);
      if (!left || left.some(isEmpty)) continue;
      const removes = removesOf(unit, knowledge, left);
      if (removes.size === 0) continue;
      const because = reasonsOf(unit, knowledge, board).reasons;
      for (const cell of removes.keys()) {
        const digits = left[unit.cells.indexOf(cell)]!;
        if (isOne(digits)) yield placing("clue-cases", 2, cell, min(digits), because);
      }
      yield removing("clue-cases", 2, removes, because);
      if (removes.size > 1) for (const [cell, gone] of removes) yield removing("clue-cases", 2, new Map([[cell, gone]]), because);
    }
  },
};
