import type { Digits } from "../board/digits.ts";
import { matchingOf } from "./matching.ts";
import type { Propagator, Run, TermMeaning } from "./term.ts";

const propagator = ({ cells }: Run): Propagator => {
  const size = cells.length;
  if (size > 32) return () => false;
  const matching = matchingOf(size);
  const kept = new Int32Array(size);
  const first = size === 32 ? -1 : 2 ** size - 1;
  return (domains) => {
    kept.fill(0);
    for (let start = 0; start + size <= 32; start++) {
      const window = first << start;
      for (let k = 0; k < size; k++) matching.options[k] = domains.at(cells[k]!) & window;
      if (matching.run()) for (let k = 0; k < size; k++) kept[k]! |= matching.taken[k]!;
    }
    return cells.every((cell, k) => domains.keep(cell, kept[k] as Digits));
  };
};

export const run: TermMeaning<Run> = { term: "run", strength: "full", propagator };
