import type { Board } from "../board/board.ts";
import { type Digits, digitsOf, either, isWithin } from "../board/digits.ts";
import { claimOf } from "../deduce/claim.ts";
import type { Deduction } from "../deduce/deduction.ts";
import type { Claim } from "../deduce/step.ts";
import type { Definition } from "../prove/definition.ts";
import { prove } from "../prove/prove.ts";
import type { Cell } from "../puzzle/canvas.ts";

/** Every cell that the reasons or the conclusion touch. */
const touchedBy = ({ because, places, removes }: Deduction, about: Definition): Cell[] => {
  const houses = because.houses.flatMap((id) => about.houses.get(id)!.cells);
  const rules = because.rules.flatMap((id) => about.rules.get(id)!.cells);
  return [...new Set([...houses, ...rules, ...because.facts.keys(), ...places.keys(), ...removes.keys()])].sort(
    (a, b) => a - b,
  );
};

const holdsWithWider = (claim: Claim, about: Definition, cell: Cell, digits: Digits): boolean => {
  const domains = about.domains.map((own, other) => (other === cell ? digits : own));
  return prove(claim, { ...about, domains }).verdict === "proved";
};

/**
 * The cells whose grids allow fewer digits than the claim would need: with all digits of the other touched cells allowed
 * there too, it would fail. No premises; they are drawn and said ("these four only go up to 4"). None within one grid.
 */
export const limitsOf = (board: Board, about: Definition, deduction: Deduction): string[] => {
  if (deduction.assume) return [];
  const touched = touchedBy(deduction, about);
  const all = touched.reduce<Digits>((union, cell) => either(union, about.domains[cell]!), digitsOf([]));
  const candidates = touched.filter(
    (cell) => !deduction.because.facts.has(cell) && !isWithin(all, about.domains[cell]!),
  );
  if (candidates.length === 0) return [];
  const claim = claimOf(board, deduction);
  return candidates.filter((cell) => !holdsWithWider(claim, about, cell, all)).map((cell) => board.canvas.names[cell]!);
};
