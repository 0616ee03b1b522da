import { type Digits, max, min } from "../board/digits.ts";
import type { Order, Propagator, TermMeaning } from "./term.ts";

/** The digits from `digit` on. */
const from = (digit: number): Digits => (digit > 31 ? 0 : -1 << digit) as Digits;
/** The digits up to `digit`. */
const upTo = (digit: number): Digits => (digit < 0 ? 0 : -1 >>> (31 - digit)) as Digits;

const propagator = ({ cells, strict }: Order): Propagator => {
  const gap = strict ? 1 : 0;
  return (domains) => {
    for (let k = 1; k < cells.length; k++)
      if (!domains.keep(cells[k]!, from(min(domains.at(cells[k - 1]!)) + gap))) return false;
    for (let k = cells.length - 2; k >= 0; k--)
      if (!domains.keep(cells[k]!, upTo(max(domains.at(cells[k + 1]!)) - gap))) return false;
    return true;
  };
};

export const order: TermMeaning<Order> = { term: "order", strength: "full", propagator };
