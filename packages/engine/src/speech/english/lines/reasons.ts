import { type Digits, has, isEmpty, only, without } from "../../../board/digits.ts";
import { apartIn, leftByReasons } from "../../../deduce/left-by-reasons.ts";
import type { Cell } from "../../../puzzle/canvas.ts";
import type { Asked } from "../../../rules/contract.ts";
import type { Telling } from "../phrase.ts";

type Premises = Pick<Asked, "known" | "differ">;

/** What the step's own premises leave of each cell, and which cells they keep apart: nothing else may be said. */
export const premisesOf = ({ deduction, board }: Telling): Premises => {
  const { because } = deduction;
  const left = leftByReasons(because, board);
  const apart = apartIn(because, board);
  return {
    known: (cell) => left[cell]!,
    differ: (a, b) => a !== b && apart.some((cells) => cells.includes(a) && cells.includes(b)),
  };
};

/** What the step takes from its cells, by its own premises. */
export const takenBy = (telling: Telling): ReadonlyMap<Cell, Digits> => {
  const { known } = premisesOf(telling);
  const { places, removes } = telling.deduction;
  const others = [...places].map(([cell, digit]) => [cell, without(known(cell), only(digit))] as const);
  return new Map([...removes, ...others].filter(([, digits]) => !isEmpty(digits)));
};

/** Why this clue rules these digits out, in a clause, where its kind can say it. */
export const reasonOf = (telling: Telling, rule: string, removes: ReadonlyMap<Cell, Digits>): string | undefined => {
  const { kind, instance } = telling.board.rule(rule)!;
  return removes.size === 0 ? undefined : kind.because?.(instance, { ...premisesOf(telling), removes });
};

export interface Barring {
  /** Clues that have the digit already and hold no digit twice. */
  readonly holding: readonly string[];
  /** By clue, why it bars the digit from those places of the house that nothing plainer does. */
  readonly reasons: ReadonlyMap<string, string>;
}

/** What keeps the digit out of the other places of the house, where each clue has its say. */
export const barringElsewhere = (telling: Telling, house: string, cell: Cell, digit: number): Barring | undefined => {
  const { board, deduction } = telling;
  const { rules, facts } = deduction.because;
  const { known } = premisesOf(telling);
  let left = board.house(house)!.cells.filter((other) => other !== cell && has(known(other), digit));
  const reasons = new Map<string, string>();
  for (const rule of rules) {
    const own = left.filter((other) => board.rule(rule)!.cells.includes(other));
    const reason = reasonOf(telling, rule, new Map(own.map((other) => [other, only(digit)])));
    if (reason === undefined) continue;
    reasons.set(rule, reason);
    left = left.filter((other) => !own.includes(other));
  }
  const holds = (rule: string): boolean =>
    board.groups.some((group) => group.rule === rule && group.cells.some((other) => facts.get(other) === only(digit)));
  const holding = rules.filter((rule) => !reasons.has(rule) && holds(rule));
  const isAll = left.length === 0 && reasons.size + holding.length === rules.length;
  return isAll && reasons.size > 0 ? { holding, reasons } : undefined;
};
