import { both, type Digits, digitsOf, either, listOf, none } from "../board/digits.ts";
import { matchingOf } from "./matching.ts";
import type { Classes, Propagator, TermMeaning } from "./term.ts";

const propagator = ({ cells, classes }: Classes): Propagator => {
  if (cells.length !== classes.length || cells.length > 32) return () => false;
  const matching = matchingOf(cells.length);
  return (domains) => {
    for (const [k, cell] of cells.entries())
      matching.options[k] = digitsOf(
        classes.flatMap((set, index) => (both(domains.at(cell), set) === 0 ? [] : [index])),
      );
    if (!matching.run()) return false;
    return cells.every((cell, k) =>
      domains.keep(
        cell,
        listOf(matching.taken[k] as Digits).reduce<Digits>((set, index) => either(set, classes[index]!), none),
      ),
    );
  };
};

export const classes: TermMeaning<Classes> = { term: "classes", strength: "full", propagator };
