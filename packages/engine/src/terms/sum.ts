import { type Digits, max, min, reversed } from "../board/digits.ts";
import { manyWords, oneWord } from "./partial-sums.ts";
import type { Domains, Propagator, Sum, TermMeaning } from "./term.ts";

/**
 * Every cell is measured from one end of its digits, so that what it adds is at least 0 and all that they add makes up
 * a rest; from the ends (all least or all greatest) that leave the smaller rest, so that it mostly fits in a word.
 */
const propagator = ({ cells: all, weights: given, equals }: Sum): Propagator => {
  const weighty = all.map((cell, k) => ({ cell, weight: given?.[k] ?? 1 })).filter(({ weight }) => weight !== 0);
  const cells = weighty.map(({ cell }) => cell);
  const size = cells.length;
  const rises = Uint8Array.from(weighty, ({ weight }) => (weight > 0 ? 1 : 0));
  const weights = Int32Array.from(weighty, ({ weight }) => Math.abs(weight));
  /** Bit j: the digit j away from the end is possible; then by how much, times the weight, the sum is further. */
  const steps = new Int32Array(size);
  const single = oneWord(weights);
  const several = manyWords(weights);

  return (domains: Domains) => {
    let least = 0;
    let most = 0;
    for (let k = 0; k < size; k++) {
      const digits = domains.at(cells[k]!);
      if (digits === 0) return false;
      const weight = weights[k]!;
      least += rises[k] ? weight * min(digits) : -weight * max(digits);
      most += rises[k] ? weight * max(digits) : -weight * min(digits);
    }
    if (equals < least || equals > most) return false;
    const up = equals - least <= most - equals ? 1 : 0;
    const rest = up ? equals - least : most - equals;
    for (let k = 0; k < size; k++) {
      const digits = domains.at(cells[k]!);
      steps[k] = rises[k] === up ? digits >>> min(digits) : reversed(digits) >>> (31 - max(digits));
    }
    if (!(rest < 32 ? single : several)(steps, rest)) return false;
    for (let k = 0; k < size; k++) {
      const digits = domains.at(cells[k]!);
      const kept = rises[k] === up ? steps[k]! << min(digits) : reversed(steps[k]!) >>> (31 - max(digits));
      if (!domains.keep(cells[k]!, kept as Digits)) return false;
    }
    return true;
  };
};

/** Full, as a sum alone: that its cells may have to differ is another term's. */
export const sum: TermMeaning<Sum> = { term: "sum", strength: "full", propagator };
