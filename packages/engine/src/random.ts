/** A seeded source of chance (mulberry32), so that every failing run can be replayed. */
export interface Random {
  /** A whole number from 0 to `below` - 1. */
  below(below: number): number;
  pick<T>(list: readonly T[]): T;
  shuffled<T>(list: readonly T[]): T[];
}

export const randomFrom = (seed: number): Random => {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const below = (limit: number): number => Math.floor(next() * limit);
  const shuffled = <T>(list: readonly T[]): T[] => {
    const copy = [...list];
    for (let k = copy.length - 1; k > 0; k--) {
      const other = below(k + 1);
      [copy[k], copy[other]] = [copy[other]!, copy[k]!];
    }
    return copy;
  };
  return { below, shuffled, pick: (list) => list[below(list.length)]! };
};
