/** Whether every item of `small` is in `large`. */
const isWithin = <T>(small: readonly T[], large: readonly T[]): boolean => small.every((item) => large.includes(item));

/** How many of the sets, taken from the first on, share no item: so many items more are needed at least. */
const apart = <T>(sets: readonly (readonly T[])[], most: number): number => {
  const taken = new Set<T>();
  let count = 0;
  for (const set of sets) {
    if (set.some((item) => taken.has(item))) continue;
    for (const item of set) taken.add(item);
    if (++count > most) return count;
  }
  return count;
};

/**
 * Grows `chosen` until it hits all, to at most `size` items; undefined where no such set is allowed. What was tried in
 * vain in a set is `spent` further down: whatever holds it was looked at then.
 */
const grown = <T>(
  missed: readonly (readonly T[])[],
  chosen: readonly T[],
  spent: ReadonlySet<T>,
  size: number,
  isAllowed: (items: readonly T[]) => boolean,
): readonly T[] | undefined => {
  if (missed.length === 0) return isAllowed(chosen) ? chosen : undefined;
  if (apart(missed, size - chosen.length) > size - chosen.length) return undefined;
  const tried = new Set(spent);
  for (const item of missed[0]!) {
    if (tried.has(item)) continue;
    const rest = missed.filter((set) => !set.includes(item));
    const found = grown(rest, [...chosen, item], tried, size, isAllowed);
    if (found) return found;
    tried.add(item);
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
    const found = grown(sets, [], new Set(), size, isAllowed);
    if (found) return found;
  }
  return undefined;
};
