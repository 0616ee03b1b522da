import { type Digits, listOf, min, none } from "../board/digits.ts";
import type { Pair, Propagator, TermMeaning } from "./term.ts";

type Allowed = Pair["allowed"];

/** The digits that go with at least one of `digits`. */
const partners = (allowed: Allowed, digits: Digits): Digits => {
  let set = 0;
  for (let rest = digits as number; rest !== 0; rest &= rest - 1) set |= allowed[min(rest as Digits)] ?? 0;
  return set as Digits;
};

const inverse = (allowed: Allowed): Digits[] => {
  const table = Array.from({ length: 32 }, () => none);
  for (const [first, seconds] of allowed.entries())
    for (const second of listOf(seconds ?? none)) table[second] = (table[second]! | (1 << first)) as Digits;
  return table;
};

const propagator = ({ cells, allowed }: Pair): Propagator => {
  const [first, second] = cells as readonly [number, number];
  const back = inverse(allowed);
  return (domains) =>
    domains.keep(second, partners(allowed, domains.at(first))) &&
    domains.keep(first, partners(back, domains.at(second)));
};

export const pair: TermMeaning<Pair> = { term: "pair", strength: "full", propagator };
