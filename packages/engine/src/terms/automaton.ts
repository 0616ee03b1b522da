import type { Digits } from "../board/digits.ts";
import { readingOf } from "./reading.ts";
import type { Automaton, Domains, Propagator, TermMeaning } from "./term.ts";

/** The reading is worked out for the digits that the first call finds, and again where a later one finds others. */
const propagator = (term: Automaton): Propagator => {
  const { cells } = term;
  const known = new Int32Array(cells.length);
  const now = new Int32Array(cells.length);
  let narrow = readingOf(term, known);
  return (domains: Domains) => {
    let others = false;
    for (let k = 0; k < cells.length; k++) {
      now[k] = domains.at(cells[k]!);
      if ((now[k]! & ~known[k]!) !== 0) others = true;
    }
    if (others) {
      for (let k = 0; k < cells.length; k++) known[k]! |= now[k]!;
      narrow = readingOf(term, known);
    }
    if (!narrow(now)) return false;
    for (let k = 0; k < cells.length; k++) if (!domains.keep(cells[k]!, now[k] as Digits)) return false;
    return true;
  };
};

export const automaton: TermMeaning<Automaton> = { term: "automaton", strength: "full", propagator };
