/** Data in which whatever occurs more than once stands once: in a table, whose later values may point to earlier ones. */
export interface Folded {
  readonly table: readonly unknown[];
  readonly data: unknown;
}

/** Where a value of the table stands. */
interface Pointer {
  readonly $: number;
}

/** Shorter values than that are not worth a pointer. */
const least = 16;

const isWhole = (value: unknown): value is object => typeof value === "object" && value !== null;

/** The same with each part of an array or object made anew. */
const mapped = (value: object, change: (part: unknown) => unknown): unknown =>
  Array.isArray(value)
    ? value.map(change)
    : Object.fromEntries(Object.entries(value).map(([key, part]) => [key, change(part)]));

const timesOf = (data: unknown): ReadonlyMap<string, number> => {
  const times = new Map<string, number>();
  const count = (value: unknown): void => {
    if (!isWhole(value)) return;
    const key = JSON.stringify(value);
    times.set(key, (times.get(key) ?? 0) + 1);
    if (times.get(key) === 1) Object.values(value).forEach(count);
  };
  count(data);
  return times;
};

/** Folds what JSON can write; no object of it may have a key `$`. */
export const folded = (data: unknown): Folded => {
  const times = timesOf(data);
  const table: unknown[] = [];
  const places = new Map<string, Pointer>();
  const fold = (value: unknown): unknown => {
    if (!isWhole(value)) return value;
    const key = JSON.stringify(value);
    if (times.get(key) === 1 || key.length < least) return mapped(value, fold);
    const place = places.get(key) ?? { $: table.push(mapped(value, fold)) - 1 };
    places.set(key, place);
    return place;
  };
  const whole = fold(data);
  return { table, data: whole };
};

/** What was folded, as it was. */
export const unfolded = ({ table, data }: Folded): unknown => {
  const open: unknown[] = [];
  const unfold = (value: unknown): unknown => {
    if (!isWhole(value)) return value;
    return "$" in value ? open[(value as Pointer).$] : mapped(value, unfold);
  };
  for (const value of table) open.push(unfold(value));
  return unfold(data);
};
