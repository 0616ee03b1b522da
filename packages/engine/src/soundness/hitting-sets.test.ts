import { expect, test } from "vitest";
import { randomFrom } from "../../test-kit/random.ts";
import { smallestHitting } from "./hitting-sets.ts";

test.each([
  { sets: [], expected: 0 },
  { sets: [[1, 2, 3]], expected: 1 },
  {
    sets: [
      [1, 2],
      [2, 3],
      [3, 1],
    ],
    expected: 2,
  },
  { sets: [[1], [2], [3]], expected: 3 },
])("$sets takes $expected", ({ sets, expected }) => expect(smallestHitting(sets, [], 9)).toHaveLength(expected));

test("nothing hits an empty set, and too many are none", () => {
  expect(smallestHitting([[]], [], 9)).toBeUndefined();
  expect(smallestHitting([[1], [2]], [], 1)).toBeUndefined();
});

test("not again what is barred", () => {
  expect(smallestHitting([[1, 2]], [[1]], 9)).toEqual([2]);
  expect(smallestHitting([[1, 2]], [[1], [2]], 9)).toBeUndefined();
});

const subsets = (items: readonly number[]): number[][] =>
  Array.from({ length: 2 ** items.length }, (_, set) => items.filter((_, k) => (set >> k) & 1));

test("as small as trying every set finds", () => {
  const items = [1, 2, 3, 4, 5, 6];
  const random = randomFrom(7);
  for (let run = 0; run < 200; run++) {
    const sets = Array.from({ length: 1 + random.below(6) }, () =>
      random.shuffled(items).slice(0, 1 + random.below(3)),
    );
    const hits = (some: readonly number[]): boolean => sets.every((set) => set.some((item) => some.includes(item)));
    const least = Math.min(
      ...subsets(items)
        .filter(hits)
        .map((some) => some.length),
    );
    const found = smallestHitting(sets, [], 6)!;
    expect(hits(found)).toBe(true);
    expect(found).toHaveLength(least);
  }
});
