import { type Digits, has, only } from "../board/digits.ts";
import { matchingOf } from "./matching.ts";
import type { Contains, Propagator, TermMeaning } from "./term.ts";

/** Each listed digit needs a cell of its own; a cell that every pairing uses holds one of the digits that use it. */
const propagator = ({ cells, digits }: Contains): Propagator => {
  if (digits.length > cells.length) return () => false;
  if (cells.length > 32) throw new Error(`a term "contains" of ${cells.length} cells; at most 32`);
  const matching = matchingOf(digits.length);
  return (domains) => {
    for (const [k, digit] of digits.entries())
      matching.options[k] = cells.reduce(
        (set, cell, index) => (has(domains.at(cell), digit) ? set | (1 << index) : set),
        0,
      );
    if (!matching.run()) return false;
    return cells.every((cell, index) => {
      if (has(matching.spare() as Digits, index)) return domains.at(cell) !== 0;
      const serving = digits.filter((_, k) => has(matching.taken[k] as Digits, index));
      return domains.keep(
        cell,
        serving.reduce<Digits>((set, digit) => (set | only(digit)) as Digits, 0 as Digits),
      );
    });
  };
};

export const contains: TermMeaning<Contains> = { term: "contains", strength: "full", propagator };
