import { type Digits, min } from "../board/digits.ts";
import type { Pair, Propagator, TermMeaning } from "./term.ts";

/** One look at what goes with each digit of the first tells what is left of both. */
const propagator = ({ cells, allowed }: Pair): Propagator => {
  const [first, second] = cells as readonly [number, number];
  return (domains) => {
    const seconds = domains.at(second);
    let keptFirst = 0;
    let keptSecond = 0;
    for (let rest = domains.at(first) as number; rest !== 0; rest &= rest - 1) {
      const partners = (allowed[min(rest as Digits)] ?? 0) & seconds;
      if (partners !== 0) keptFirst |= rest & -rest;
      keptSecond |= partners;
    }
    return domains.keep(second, keptSecond as Digits) && domains.keep(first, keptFirst as Digits);
  };
};

export const pair: TermMeaning<Pair> = { term: "pair", strength: "full", propagator };
