/** Whether every item of `small` is in `large`. */
const isWithin = <T>(small: readonly T[], large: readonly T[]): boolean => small.every((item) => large.includes(item));

/** Grows `chosen` until it hits all, to at most `size` items; undefined where no such set is allowed. */
const grown = <T>(
  sets: readonly (readonly T[])[],
  chosen: readonly T[],
  size: number,
  isAllowed: (items: readonly T[]) => boolean,
): readonly T[] | undefined => {
  const missed = sets.find((set) => !set.some((item) => chosen.includes(item)));
  if (!missed) return isAllowed(chosen) ? chosen : undefined;
  if (chosen.length === size) return undefined;
  for (const item of missed) {
    const found = grown(sets, [...chosen, item], size, isAllowed);
    if (found) return found;
  }
  return undefined;
};

/**
 * A smallest list of items, at most `most`, that has one of every set and does not hold all of any list in `barred`;
 * undefined where there is none.
 */
export const smallestHitting = <T>(
  sets: readonly (readonly T[])[],
  barred: readonly (readonly T[])[],
  most: number,
): readonly T[] | undefined => {
  const isAllowed = (items: readonly T[]): boolean => !barred.some((list) => isWithin(list, items));
  for (let size = 0; size <= most; size++) {
    const found = grown(sets, [], size, isAllowed);
    if (found) return found;
  }
  return undefined;
};
