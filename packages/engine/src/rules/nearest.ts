/** How many letters must be added, taken out, changed or swapped with their neighbour to make one word of the other. */
const distance = (a: string, b: string): number => {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const changed = rows[i - 1]![j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swapped =
        i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1] ? rows[i - 2]![j - 2]! + 1 : changed;
      row.push(Math.min(changed, swapped, rows[i - 1]![j]! + 1, row[j - 1]! + 1));
    }
    rows.push(row);
  }
  return rows[a.length]![b.length]!;
};

/** The name that a misspelt word most likely means; undefined where none is near. */
export const nearest = (word: string, names: readonly string[]): string | undefined => {
  if (word.length > 60) return undefined;
  const spelt = word.toLowerCase().replace(/[\s_]+/g, "-");
  const near = names
    .map((name) => ({ name, apart: distance(spelt, name) }))
    .filter(({ name, apart }) => apart <= Math.max(1, name.length / 2))
    .sort((a, b) => a.apart - b.apart);
  return near[0]?.name;
};

/** What would be right in place of an unknown name, with the name that it most likely means. */
export const withNearest = (right: string, word: string, names: readonly string[]): string => {
  const near = nearest(word, names);
  return near ? `${right}; the nearest is ${near}` : right;
};

/** What would be right in place of an unknown key. */
export const oneOfKeys = (key: string, keys: readonly string[]): string =>
  withNearest(`one of the keys ${keys.join(", ")}`, key, keys);
