/** A set of digits as bits: bit d is set when digit d, from 0 to 31, is in it. */
export type Digits = number & { readonly _: "Digits" };

export const none = 0 as Digits;
export const only = (digit: number): Digits => (1 << digit) as Digits;
export const digitsOf = (list: Iterable<number>): Digits => {
  let set = 0;
  for (const digit of list) set |= 1 << digit;
  return set as Digits;
};

export const has = (set: Digits, digit: number): boolean => ((set >>> digit) & 1) === 1;
export const isEmpty = (set: Digits): boolean => set === 0;
export const isOne = (set: Digits): boolean => set !== 0 && (set & (set - 1)) === 0;
export const isWithin = (set: Digits, other: Digits): boolean => (set & ~other) === 0;
export const both = (set: Digits, other: Digits): Digits => (set & other) as Digits;
export const either = (set: Digits, other: Digits): Digits => (set | other) as Digits;
export const without = (set: Digits, other: Digits): Digits => (set & ~other) as Digits;

export const count = (set: Digits): number => {
  let bits = set - ((set >>> 1) & 0x55555555);
  bits = (bits & 0x33333333) + ((bits >>> 2) & 0x33333333);
  return (((bits + (bits >>> 4)) & 0x0f0f0f0f) * 0x01010101) >>> 24;
};

/** What its digits add up to. */
export const sumOf = (set: Digits): number => {
  let sum = 0;
  for (let rest = set as number; rest !== 0; rest &= rest - 1) sum += min(rest as Digits);
  return sum;
};

/** The digit d as 31 - d. */
export const reversed = (set: number): number => {
  let x = ((set >>> 1) & 0x55555555) | ((set & 0x55555555) << 1);
  x = ((x >>> 2) & 0x33333333) | ((x & 0x33333333) << 2);
  x = ((x >>> 4) & 0x0f0f0f0f) | ((x & 0x0f0f0f0f) << 4);
  x = ((x >>> 8) & 0x00ff00ff) | ((x & 0x00ff00ff) << 8);
  return (x >>> 16) | (x << 16);
};

/** The smallest digit, or -1 of the empty set. */
export const min = (set: Digits): number => 31 - Math.clz32(set & -set);
/** The greatest digit, or -1 of the empty set. */
export const max = (set: Digits): number => 31 - Math.clz32(set);

/** The digits in ascending order. */
export const listOf = (set: Digits): number[] => {
  const list: number[] = [];
  for (let rest = set as number; rest !== 0; rest &= rest - 1) list.push(min(rest as Digits));
  return list;
};
