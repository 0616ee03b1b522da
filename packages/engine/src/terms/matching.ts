/**
 * Pairs every node on the left with a node of its own on the right. Nodes on both sides count from 0 to 31; a set of
 * nodes on the right is a mask. `options` is filled by the caller before each `run`; what it finds stays until the next.
 */
export interface Matching {
  /** By left node: the right nodes that it may take. */
  readonly options: Int32Array;
  /** False when no pairing covers the left. */
  run(): boolean;
  /** By left node: the right nodes that it takes in some pairing that covers the left. */
  readonly taken: Int32Array;
  /** The right nodes that some pairing leaves over. */
  spare(): number;
}

const lowest = (mask: number): number => 31 - Math.clz32(mask & -mask);

/** For `size` nodes on the left. It starts from the pairing of the last run, so that small changes cost little. */
export const matchingOf = (size: number, all = -1): Matching => {
  const options = new Int32Array(size);
  const taken = new Int32Array(size);
  const partner = new Int32Array(size).fill(-1);
  const holder = new Int32Array(32).fill(-1);
  const reach = new Int32Array(size);
  let used = 0;
  let seen = 0;
  let spare = 0;

  const take = (left: number, right: number): true => {
    partner[left] = right;
    holder[right] = left;
    used |= 1 << right;
    return true;
  };

  /** An alternating path from a left node without partner to an unused right node. */
  const place = (left: number): boolean => {
    const free = options[left]! & ~used;
    if (free !== 0) return take(left, lowest(free));
    for (let rest = options[left]! & ~seen; rest !== 0; rest = options[left]! & ~seen) {
      const right = lowest(rest);
      seen |= 1 << right;
      if (place(holder[right]!)) return take(left, right);
    }
    return false;
  };

  const pairUp = (): boolean => {
    used = 0;
    for (let left = 0; left < size; left++) {
      const bit = partner[left]! < 0 ? 0 : 1 << partner[left]!;
      if ((options[left]! & bit & ~used) !== 0) take(left, partner[left]!);
      else partner[left] = -1;
    }
    for (let left = 0; left < size; left++) {
      seen = 0;
      if (partner[left]! < 0 && !place(left)) return false;
    }
    return true;
  };

  /** reach[a]: the left nodes that must or may move on when `a` takes another's partner, to the end of the chain. */
  const findReach = (): void => {
    for (let left = 0; left < size; left++) {
      let next = 1 << left;
      for (let rest = options[left]! & used; rest !== 0; rest &= rest - 1) next |= 1 << holder[lowest(rest)]!;
      reach[left] = next;
    }
    for (let via = 0; via < size; via++)
      for (let left = 0; left < size; left++) if ((reach[left]! >>> via) & 1) reach[left]! |= reach[via]!;
  };

  /** An exchange is possible along a cycle or along a chain that ends in an unused right node. */
  const findTaken = (): void => {
    let ends = 0;
    for (let left = 0; left < size; left++) if ((options[left]! & ~used) !== 0) ends |= 1 << left;
    spare = all & ~used;
    let loose = 0;
    for (let left = 0; left < size; left++) if ((reach[left]! & ends) !== 0) loose |= 1 << left;
    for (let left = 0; left < size; left++) {
      if ((loose >>> left) & 1) spare |= 1 << partner[left]!;
      let found = options[left]! & ~used;
      for (let rest = options[left]! & used; rest !== 0; rest &= rest - 1) {
        const other = holder[lowest(rest)]!;
        if ((loose >>> other) & 1 || (reach[other]! >>> left) & 1) found |= rest & -rest;
      }
      taken[left] = found;
    }
  };

  const run = (): boolean => {
    if (!pairUp()) return false;
    findReach();
    findTaken();
    return true;
  };
  return { options, taken, run, spare: () => spare };
};
