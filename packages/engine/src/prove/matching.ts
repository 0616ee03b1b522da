/** Whether each cell can be given a digit of its own; `domains` as bits, digits 0 to 31. */
export const canMatch = (domains: readonly number[]): boolean => {
  const holder = new Int32Array(32).fill(-1);
  let tried = 0;
  const give = (cell: number): boolean => {
    for (;;) {
      const rest = domains[cell]! & ~tried;
      if (rest === 0) return false;
      const digit = 31 - Math.clz32(rest & -rest);
      tried |= 1 << digit;
      if (holder[digit]! >= 0 && !give(holder[digit]!)) continue;
      holder[digit] = cell;
      return true;
    }
  };
  for (let cell = 0; cell < domains.length; cell++) {
    tried = 0;
    if (!give(cell)) return false;
  }
  return true;
};
