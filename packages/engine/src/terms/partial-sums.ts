/**
 * Keeps of each cell's steps only those that some way of making up `rest` uses; false when there is no way.
 * Bit j of `steps[k]` stands for j times `weights[k]`; every step list has its least at 0.
 */
export type Narrowing = (steps: Int32Array, rest: number) => boolean;

const lowest = (mask: number): number => 31 - Math.clz32(mask & -mask);

/** For rests up to 31: bit s of a set of sums stands for the sum s. */
export const oneWord = (weights: Int32Array): Narrowing => {
  const size = weights.length;
  const before = new Int32Array(size + 1);
  return (steps, rest) => {
    const within = (2 << rest) - 1;
    before[0] = 1;
    for (let k = 0; k < size; k++) {
      let sums = 0;
      for (let left = steps[k]!; left !== 0; left &= left - 1) {
        const by = lowest(left) * weights[k]!;
        if (by > rest) break;
        sums |= before[k]! << by;
      }
      before[k + 1] = sums & within;
    }
    let after = 1 << rest;
    if ((before[size]! & after) === 0) return false;
    for (let k = size - 1; k >= 0; k--) {
      let kept = 0;
      let sums = 0;
      for (let left = steps[k]!; left !== 0; left &= left - 1) {
        const by = lowest(left) * weights[k]!;
        if (by > rest) break;
        if (((before[k]! << by) & after) !== 0) kept |= left & -left;
        sums |= after >>> by;
      }
      steps[k] = kept;
      after = sums;
    }
    return true;
  };
};

/** For any rest: a set of sums is as many words as it needs. */
export const manyWords = (weights: Int32Array): Narrowing => {
  const size = weights.length;
  let before = new Int32Array(0);
  let after = new Int32Array(0);
  let words = 0;

  /** The word of `sets` at `place` and the one below, moved up by `bits`; a set starts with words of its own. */
  const movedUp = (from: number, word: number, bits: number): number => {
    const place = word - (bits >>> 5);
    if (place < 0) return 0;
    const under = bits & 31 && place > 0 ? before[from + place - 1]! >>> (32 - (bits & 31)) : 0;
    return (before[from + place]! << (bits & 31)) | under;
  };
  const movedDown = (from: number, word: number, bits: number): number => {
    const place = word + (bits >>> 5);
    if (place >= words) return 0;
    const over = bits & 31 && place + 1 < words ? after[from + place + 1]! << (32 - (bits & 31)) : 0;
    return (after[from + place]! >>> (bits & 31)) | over;
  };
  const start = (rest: number): void => {
    words = (rest >>> 5) + 1;
    if (before.length < words * (size + 1)) {
      before = new Int32Array(words * (size + 1));
      after = new Int32Array(words * (size + 1));
    }
    before.fill(0);
    after.fill(0);
    before[0] = 1;
    after[size * words + (rest >>> 5)] = 1 << (rest & 31);
  };
  const forwards = (k: number, steps: number, rest: number): void => {
    for (let left = steps; left !== 0; left &= left - 1) {
      const by = lowest(left) * weights[k]!;
      if (by > rest) break;
      for (let word = 0; word < words; word++) before[(k + 1) * words + word]! |= movedUp(k * words, word, by);
    }
  };
  const meets = (k: number, by: number): boolean => {
    for (let word = 0; word < words; word++)
      if ((movedUp(k * words, word, by) & after[(k + 1) * words + word]!) !== 0) return true;
    return false;
  };
  const backwards = (k: number, steps: number, rest: number): number => {
    let kept = 0;
    for (let left = steps; left !== 0; left &= left - 1) {
      const by = lowest(left) * weights[k]!;
      if (by > rest) break;
      if (meets(k, by)) kept |= left & -left;
      for (let word = 0; word < words; word++) after[k * words + word]! |= movedDown((k + 1) * words, word, by);
    }
    return kept;
  };
  return (steps, rest) => {
    start(rest);
    for (let k = 0; k < size; k++) forwards(k, steps[k]!, rest);
    if (((before[size * words + (rest >>> 5)]! >>> (rest & 31)) & 1) === 0) return false;
    for (let k = size - 1; k >= 0; k--) steps[k] = backwards(k, steps[k]!, rest);
    return true;
  };
};
