import { both, type Digits } from "../board/digits.ts";
import type { Equal, Propagator, TermMeaning } from "./term.ts";

const propagator =
  ({ cells }: Equal): Propagator =>
  (domains) => {
    const common = cells.reduce<Digits>((set, cell) => both(set, domains.at(cell)), -1 as Digits);
    return cells.every((cell) => domains.keep(cell, common));
  };

export const equal: TermMeaning<Equal> = { term: "equal", strength: "full", propagator };
