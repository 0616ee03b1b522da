import type { Board } from "../board/board.ts";
import { isWithin, listOf, without } from "../board/digits.ts";
import { at, isSettled, type Knowledge, startOf } from "../board/knowledge.ts";
import { keyOfRelated } from "../board/related.ts";
import { after } from "../deduce/after.ts";
import { type Burst, freshened } from "../deduce/chain.ts";
import type { Deduction, Spot } from "../deduce/deduction.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { groundsOf } from "./needs.ts";

/** The steps that reasoning gave, to be taken in any order that holds. */
export interface Pool {
  /** Those that settle a cell. */
  readonly goals: readonly Deduction[];
  /**
   * The steps that a goal still needs in this state, itself last, each with what is new of it; undefined where it leans
   * on a digit that is not placed yet.
   */
  lead(goal: Deduction, knowledge: Knowledge): Burst | undefined;
  /** Whether a step is one of its own: made small and proved. */
  has(step: Deduction): boolean;
  /** How many of the goals stood on this cell's digit, directly or not. */
  opens(cell: Cell): number;
  /** The cells that the digit of this one stood on, directly or not. */
  ground(cell: Cell): ReadonlySet<Cell>;
}

const spotKey = ({ house, digit, cells }: Spot): string => `${house} ${digit} ${cells.join()}`;

/** By step, the cells that its words speak of as digits that stand: of its facts, and of a house of which it is the last cell. */
const standingOf = (steps: readonly Deduction[], board: Board): (readonly Cell[])[] => {
  let knowledge = startOf(board);
  return steps.map((step) => {
    const spoken = step.technique === "last-cell" ? board.house(step.because.houses[0]!)!.cells : [];
    const standing = [...step.because.facts.keys(), ...spoken].filter((cell) => isSettled(knowledge, cell));
    knowledge = after(knowledge, board, step);
    return standing;
  });
};

interface Suppliers {
  readonly standing: readonly (readonly Cell[])[];
  readonly removed: ReadonlyMap<number, number>;
  readonly said: ReadonlyMap<string, number>;
}

const suppliersOf = (steps: readonly Deduction[], board: Board): Suppliers => {
  const removed = new Map<number, number>();
  const said = new Map<string, number>();
  const first = <K>(map: Map<K, number>, key: K, index: number): void => {
    if (!map.has(key)) map.set(key, index);
  };
  for (const [index, { removes, spots, relates }] of steps.entries()) {
    for (const [cell, digits] of removes) for (const digit of listOf(digits)) first(removed, cell * 32 + digit, index);
    for (const spot of spots) first(said, spotKey(spot), index);
    for (const related of relates) first(said, keyOfRelated(related), index);
  }
  return { standing: standingOf(steps, board), removed, said };
};

/** Adds the step and whatever it needs; false where it needs a digit that is not there. */
const collect = (
  index: number,
  steps: readonly Deduction[],
  suppliers: Suppliers,
  knowledge: Knowledge,
  wanted: Set<number>,
): boolean => {
  if (wanted.has(index)) return true;
  wanted.add(index);
  const { facts, spots, relations } = steps[index]!.because;
  const { standing, removed, said } = suppliers;
  if (!standing[index]!.every((cell) => isSettled(knowledge, cell))) return false;
  const take = (supplier: number | undefined): boolean =>
    supplier !== undefined && supplier < index && collect(supplier, steps, suppliers, knowledge, wanted);
  for (const [cell, digits] of facts)
    if (!isWithin(at(knowledge, cell), digits))
      for (const digit of listOf(without(at(knowledge, cell), digits)))
        if (!take(removed.get(cell * 32 + digit))) return false;
  // A spot that no step concluded is plain from the marks: what keeps the digit out elsewhere is known already.
  for (const spot of spots) if (said.has(spotKey(spot)) && !take(said.get(spotKey(spot)))) return false;
  for (const related of relations)
    if (said.has(keyOfRelated(related)) && !take(said.get(keyOfRelated(related)))) return false;
  return true;
};

const cellsOf = (burst: Burst): Cell[] => [...burst.at(-1)!.places.keys()];

export const poolOf = (bursts: readonly Burst[], board: Board): Pool => {
  const steps = bursts.flat();
  const suppliers = suppliersOf(steps, board);
  const indices = new Map(steps.map((step, index) => [step, index]));
  const grounds = groundsOf(bursts, board);
  const opens = new Map(
    bursts.flatMap((burst, index) => {
      const many = grounds.filter((ground) => ground.has(index)).length;
      return cellsOf(burst).map((cell) => [cell, many] as const);
    }),
  );
  const ground = new Map(
    bursts.flatMap((burst, index) => {
      const cells = new Set([...grounds[index]!].flatMap((earlier) => cellsOf(bursts[earlier]!)));
      return cellsOf(burst).map((cell) => [cell, cells] as const);
    }),
  );
  return {
    goals: steps.filter(({ places }) => places.size > 0),
    has: (step) => indices.has(step),
    ground: (cell) => ground.get(cell) ?? new Set(),
    opens: (cell) => opens.get(cell) ?? 0,
    lead: (goal, knowledge) => {
      const wanted = new Set<number>();
      if (!collect(indices.get(goal)!, steps, suppliers, knowledge, wanted)) return undefined;
      return freshened(
        [...wanted].sort((a, b) => a - b).map((index) => steps[index]!),
        knowledge,
        board,
      );
    },
  };
};

export const isOpenGoal = ({ places }: Deduction, knowledge: Knowledge): boolean =>
  [...places.keys()].some((cell) => !isSettled(knowledge, cell));
