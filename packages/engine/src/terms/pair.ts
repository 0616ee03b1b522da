import type { Digits } from "../board/digits.ts";
import type { Pair, Propagator, TermMeaning } from "./term.ts";

/** Read the one way only, from the first cell to the second: turning the table round would cost more than it saves. */
const propagator =
  ({ cells: [first, second], allowed }: Pair): Propagator =>
  (domains) => {
    const seconds = domains.at(second!);
    let keptFirst = 0;
    let keptSecond = 0;
    for (let rest = domains.at(first!) as number; rest !== 0; rest &= rest - 1) {
      const partners = (allowed[31 - Math.clz32(rest & -rest)] ?? 0) & seconds;
      if (partners !== 0) keptFirst |= rest & -rest;
      keptSecond |= partners;
    }
    return domains.keep(first!, keptFirst as Digits) && domains.keep(second!, keptSecond as Digits);
  };

export const pair: TermMeaning<Pair> = { term: "pair", strength: "full", propagator };
