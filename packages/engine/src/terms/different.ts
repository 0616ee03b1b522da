import { count, type Digits } from "../board/digits.ts";
import { matchingOf } from "./matching.ts";
import type { Different, Domains, Propagator, TermMeaning } from "./term.ts";

const every = -1 as Digits;

const propagator = ({ cells, digits }: Different): Propagator => {
  if (cells.length > 32) return () => false;
  const within = digits !== undefined && count(digits) === cells.length ? digits : every;
  const matching = matchingOf(cells.length);
  return (domains: Domains) => {
    cells.forEach((cell, k) => {
      matching.options[k] = domains.at(cell) & within;
    });
    return matching.run() && cells.every((cell, k) => domains.keep(cell, matching.taken[k] as Digits));
  };
};

export const different: TermMeaning<Different> = { term: "different", strength: "full", propagator };
