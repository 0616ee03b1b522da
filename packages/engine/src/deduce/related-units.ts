import type { Board } from "../board/board.ts";
import { type Digits, digitsOf } from "../board/digits.ts";
import { keyOfRelated, type Related } from "../board/related.ts";
import { remembered } from "../board/remembered.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Term } from "../terms/term.ts";
import { type Unit, unitOf } from "./unit.ts";

const [evens, odds] = [0, 1].map((rest) => digitsOf(Array.from({ length: 16 }, (_, half) => 2 * half + rest))) as [
  Digits,
  Digits,
];

/** By digit of the one cell, the digits of the other that go with it. */
const parityTable = (is: "same" | "different"): Digits[] =>
  Array.from({ length: 32 }, (_, digit) => ((digit % 2 === 1) === (is === "same") ? odds : evens));

/** What a relation means to the cases of reasoning. */
const termOf = (related: Related): Term => {
  const { cells } = related;
  const owner = keyOfRelated(related);
  switch (related.relation) {
    case "same":
      return { term: "equal", owner, cells };
    case "less":
      return { term: "order", owner, cells, strict: true };
    case "sum":
      return { term: "sum", owner, cells, equals: related.is };
    case "parity":
      return { term: "pair", owner, cells, allowed: parityTable(related.is) };
  }
};

/** Cells that are the same or add up say something beside a clue on one of them; order and parity only where it has both. */
const isJoined = ({ relation, cells }: Related, clue: readonly Cell[]): boolean => {
  const shared = cells.filter((cell) => clue.includes(cell)).length;
  return relation === "same" || relation === "sum" ? shared > 0 : shared === cells.length;
};

const mostCells = 12;

const unitsOf = (board: Board, related: Related): Unit[] =>
  board.rules
    .filter(({ wholeGrid, leftOut }) => !wholeGrid && !leftOut)
    .filter(({ cells }) => cells.length <= mostCells && isJoined(related, cells))
    .map(({ id, kind, instance }) => unitOf(board, { rules: [id], terms: [termOf(related), ...kind.terms(instance)] }));

const unitsByKey = remembered((_: Board) => new Map<string, readonly Unit[]>());

/** A relation and one clue on its cells, looked at together: once for each such clue. */
export const relatedUnits = (board: Board, related: Related): readonly Unit[] => {
  const known = unitsByKey(board).get(keyOfRelated(related)) ?? unitsOf(board, related);
  unitsByKey(board).set(keyOfRelated(related), known);
  return known;
};
