import { automaton } from "./automaton.ts";
import { classes } from "./classes.ts";
import { contains } from "./contains.ts";
import { different } from "./different.ts";
import { equal } from "./equal.ts";
import { order } from "./order.ts";
import { pair } from "./pair.ts";
import { run } from "./run.ts";
import { sameDigits } from "./same-digits.ts";
import { sum } from "./sum.ts";
import { table } from "./table.ts";
import type { Propagator, Term, TermMeaning } from "./term.ts";

type MeaningOf<T extends Term = Term> = T extends Term ? TermMeaning<T> : never;

/** What every term means. */
export const terms: readonly MeaningOf[] = [
  different,
  pair,
  order,
  sum,
  equal,
  run,
  contains,
  sameDigits,
  classes,
  automaton,
  table,
];

const byName = new Map(terms.map((meaning) => [meaning.term, meaning as TermMeaning<Term>]));

export const meaningOf = (term: Term): TermMeaning<Term> => {
  const meaning = byName.get(term.term);
  if (!meaning) throw new Error(`no meaning of the term ${term.term}`);
  return meaning;
};

/** Compiled anew at each call: keep it where it is used again. */
export const propagatorOf = (term: Term): Propagator => meaningOf(term).propagator(term);
