import type { Board } from "../board/board.ts";
import { type Digits, digitsOf, listOf } from "../board/digits.ts";
import type { Related } from "../board/related.ts";
import { cellsOfRelation } from "../prove/form.ts";
import { type Cell, cellNamed } from "../puzzle/canvas.ts";
import type { Conclusion, Deduction, Spot } from "./deduction.ts";
import type { Claim, Relation, SpotFact, Step } from "./step.ts";

const byName = <T>(board: Board, of: ReadonlyMap<Cell, T>): [string, T][] =>
  [...of].sort(([a], [b]) => a - b).map(([cell, value]) => [board.canvas.names[cell]!, value]);

const digitLists = (board: Board, of: ReadonlyMap<Cell, Digits>): Record<string, number[]> =>
  Object.fromEntries(byName(board, of).map(([name, digits]) => [name, listOf(digits)]));

const spotFact = (board: Board, { digit, cells, house }: Spot): SpotFact => ({
  digit,
  cells: cells.map((cell) => board.canvas.names[cell]!),
  house,
});

const relation = (board: Board, related: Related): Relation => {
  const names = related.cells.map((cell) => board.canvas.names[cell]!);
  if (related.relation === "sum") return { sum: names, is: related.is };
  const two = names as [string, string];
  if (related.relation === "parity") return { parity: two, is: related.is };
  return related.relation === "same" ? { same: two } : { less: two };
};

/** A relation from its outside form. */
const relatedFrom = ({ canvas }: Board, relation: Relation): Related => {
  const cells = cellsOfRelation(relation).map((name) => cellNamed(canvas, name)!);
  if ("sum" in relation) return { relation: "sum", cells, is: relation.is };
  const two = cells as [Cell, Cell];
  if ("parity" in relation) return { relation: "parity", cells: two, is: relation.is };
  return { relation: "same" in relation ? "same" : "less", cells: two };
};

/** What a claim concludes, from its outside form. */
export const conclusionFrom = (board: Board, { places, removes, spots, relates }: Told): Conclusion => {
  const cellOf = (name: string): Cell => cellNamed(board.canvas, name)!;
  const byCell = <T, U>(table: Readonly<Record<string, T>>, read: (value: T) => U) =>
    new Map(Object.entries(table).map(([name, value]) => [cellOf(name), read(value)]));
  return {
    places: byCell(places, (digit) => digit),
    removes: byCell(removes, digitsOf),
    spots: spots.map(({ digit, house, cells }) => ({ digit, house, cells: cells.map(cellOf) })),
    relates: relates.map((relation) => relatedFrom(board, relation)),
  };
};

/** What a claim concludes, in its outside form. */
export type Told = Pick<Claim, "places" | "removes" | "spots" | "relates">;

/** A deduction in the outside form that the prover judges: cells by their names. */
export const claimOf = (board: Board, deduction: Deduction): Claim => ({
  places: Object.fromEntries(byName(board, deduction.places)),
  removes: digitLists(board, deduction.removes),
  spots: deduction.spots.map((spot) => spotFact(board, spot)),
  relates: deduction.relates.map((related) => relation(board, related)),
  because: {
    facts: digitLists(board, deduction.because.facts),
    spots: deduction.because.spots.map((spot) => spotFact(board, spot)),
    relations: deduction.because.relations.map((related) => relation(board, related)),
    houses: deduction.because.houses,
    rules: deduction.because.rules,
    recalls: [],
    limits: [],
    ...(deduction.because.counts ? { counts: deduction.because.counts } : {}),
  },
  ...(deduction.assume
    ? { assume: { [board.canvas.names[deduction.assume[0]]!]: deduction.assume[1] }, steps: subSteps(board, deduction) }
    : {}),
  ...(deduction.contradiction ? { contradiction: true as const } : {}),
});

const subSteps = (board: Board, { steps = [] }: Deduction): Step[] =>
  steps.map((step, k) => ({
    ...claimOf(board, step),
    n: `${k + 1}`,
    technique: step.technique,
    level: step.level,
    say: "",
    seconds: 0,
  }));
