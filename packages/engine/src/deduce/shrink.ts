import type { Board } from "../board/board.ts";
import { type Digits, isOne, listOf, only, without } from "../board/digits.ts";
import { at, isSettled, type Knowledge } from "../board/knowledge.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Deduction, Reasons } from "./deduction.ts";

/** Whether a deduction's claim follows from its reasons. */
export type Holds = (deduction: Deduction) => boolean;

/** The reasons with one premise left out. */
type Without = (because: Reasons) => Reasons;

export const dropName =
  (of: "houses" | "rules", id: string): Without =>
  (because) => ({ ...because, [of]: because[of].filter((other) => other !== id) });

export const dropFact =
  (cell: Cell): Without =>
  (because) => ({ ...because, facts: new Map([...because.facts].filter(([other]) => other !== cell)) });

type Listed = "spots" | "relations";
const dropItem =
  (of: Listed, item: Reasons[Listed][number]): Without =>
  (because) => ({ ...because, [of]: (because[of] as readonly unknown[]).filter((other) => other !== item) });

/** How far a cell is from what is concluded, in steps of a king. */
const distanceFrom = (board: Board, concluded: readonly Cell[]) => {
  const places = concluded.map((cell) => board.canvas.places[cell]!);
  return (cell: Cell): number => {
    const { row, column } = board.canvas.places[cell]!;
    return Math.min(...places.map((place) => Math.max(Math.abs(place.row - row), Math.abs(place.column - column))));
  };
};

/** Every way to leave one premise out: houses first, then rules, then facts, the farthest first, then the rest. */
const waysToDrop = (deduction: Deduction, board: Board): Without[] => {
  const { because } = deduction;
  const distance = distanceFrom(board, [
    ...deduction.places.keys(),
    ...deduction.removes.keys(),
    ...[...deduction.spots, ...deduction.relates].flatMap(({ cells }) => cells),
  ]);
  const facts = [...because.facts.keys()].sort((a, b) => distance(b) - distance(a));
  return [
    ...because.houses.map((id) => dropName("houses", id)),
    ...because.rules.map((id) => dropName("rules", id)),
    ...facts.map(dropFact),
    ...because.spots.map((spot) => dropItem("spots", spot)),
    ...because.relations.map((related) => dropItem("relations", related)),
  ];
};

/**
 * Makes the reasons small: drops each premise that the claim stands without. Deletion-based, so that no premise is
 * spare at the end; the order decides which of several small sets is found. Undefined where the claim does not hold.
 */
export const shrink = (deduction: Deduction, board: Board, holds: Holds): Deduction | undefined => {
  if (!holds(deduction)) return undefined;
  let kept = deduction;
  for (const drop of waysToDrop(deduction, board)) {
    const fewer = { ...kept, because: drop(kept.because) };
    if (holds(fewer)) kept = fewer;
  }
  return kept;
};

/**
 * Widens facts about open cells by digits that had to be worked out to be gone (`workedOut`), where the claim stands
 * without that: the less a step leans on, the less must be remembered.
 */
export const widened = (
  deduction: Deduction,
  knowledge: Knowledge,
  board: Board,
  workedOut: (cell: Cell, digit: number) => boolean,
  holds: Holds,
): Deduction => {
  let kept = deduction;
  for (const [cell, digits] of deduction.because.facts) {
    if (isSettled(knowledge, cell) || isOne(digits)) continue;
    for (const digit of listOf(without(board.domains[cell]!, digits))) {
      if (!workedOut(cell, digit)) continue;
      const wider = ((kept.because.facts.get(cell) ?? at(knowledge, cell)) | only(digit)) as Digits;
      if (wider === board.domains[cell]) continue;
      const next = { ...kept, because: { ...kept.because, facts: new Map([...kept.because.facts, [cell, wider]]) } };
      if (holds(next)) kept = next;
    }
  }
  return kept;
};
