import { expect, test } from "vitest";
import { type Random, randomFrom } from "../../test-kit/random.ts";
import { cutOut, type Edit, endOf, followedBy, type Span, shiftedBy, through } from "./edit.ts";

/** Quarters of a second, so that sums are exact. */
const quarter = (random: Random, most: number): number => random.below(most * 4) / 4;
const cutsFrom = (random: Random): Span[] =>
  Array.from({ length: random.below(5) }, () => {
    const from = quarter(random, 200);
    return { from, to: from + quarter(random, 30) };
  });
const times = Array.from({ length: 500 }, (_, k) => k / 2 + 0.125);
const seeds = Array.from({ length: 60 }, (_, k) => k + 1);
const isIn = (time: number) => (cut: Span) => cut.from <= time && time < cut.to;
/** Every stretch but those of others, as of a video's own pictures between the pieces. */
const withInserts = (edit: Edit, random: Random): Edit => {
  let added = 0;
  return edit.map((piece) => {
    added += quarter(random, 5);
    return { ...piece, shift: piece.shift + added };
  });
};

test.each(seeds)(
  "seed %i: what is kept comes later than zero by what is kept before it, and what is cut goes to the cut's end",
  (seed) => {
    const cuts = cutsFrom(randomFrom(seed));
    const edit = cutOut(cuts);
    /** Counted in eighths from the cuts themselves, so that the law does not lean on the pieces. */
    const keptBefore = (time: number): number => {
      let eighths = 0;
      for (let at = 0; at < time; at += 0.125) if (!cuts.some(isIn(at))) eighths++;
      return eighths / 8;
    };
    for (const time of times.slice(0, 480).filter((_, k) => k % 12 === seed % 12)) {
      const inCut = cuts.some(isIn(time));
      expect(through(edit, time)).toEqual({ at: keptBefore(time), cut: inCut });
    }
  },
);

test.each(seeds)("seed %i: a cut moves all that follows by its length, and nothing before it", (seed) => {
  const random = randomFrom(seed);
  const from = quarter(random, 200);
  const length = quarter(random, 20);
  const edit = cutOut([{ from, to: from + length }]);
  const [before, after] = [times.filter((time) => time < from), times.filter((time) => time >= from + length)];
  expect(before.map((time) => through(edit, time))).toEqual(before.map((at) => ({ at, cut: false })));
  expect(after.map((time) => through(edit, time))).toEqual(after.map((time) => ({ at: time - length, cut: false })));
});

test.each(seeds)("seed %i: later stays later", (seed) => {
  const random = randomFrom(seed);
  const edit = withInserts(cutOut(cutsFrom(random), quarter(random, 8)), random);
  const carried = times.map((time) => through(edit, time).at);
  expect(carried).toEqual([...carried].sort((a, b) => a - b));
});

test.each(seeds)("seed %i: one edit and then another is one edit", (seed) => {
  const random = randomFrom(seed);
  const first = cutOut(cutsFrom(random), quarter(random, 8));
  const second = followedBy(shiftedBy(quarter(random, 40) - 20), cutOut(cutsFrom(random)));
  const both = followedBy(first, second);
  expect(times.map((time) => through(both, time).at)).toEqual(
    times.map((time) => through(second, through(first, time).at).at),
  );
});

test.each(seeds)("seed %i: so it is of all that is kept, where other pictures stand between the pieces", (seed) => {
  const random = randomFrom(seed);
  const [first, second] = [withInserts(cutOut(cutsFrom(random)), random), cutOut(cutsFrom(random), 3)];
  const both = followedBy(first, second);
  const kept = times.filter((time) => !through(first, time).cut && !through(second, through(first, time).at).cut);
  expect(times.filter((time) => !through(both, time).cut)).toEqual(kept);
  expect(kept.map((time) => through(both, time).at)).toEqual(
    kept.map((time) => through(second, through(first, time).at).at),
  );
});

test("cuts may be given in any order, overlap and touch", () => {
  const asOne = cutOut([{ from: 10, to: 30 }]);
  expect(
    cutOut([
      { from: 20, to: 30 },
      { from: 10, to: 20 },
    ]),
  ).toEqual(asOne);
  expect(
    cutOut([
      { from: 15, to: 30 },
      { from: 10, to: 20 },
      { from: 12, to: 13 },
      { from: 50, to: 50 },
    ]),
  ).toEqual(asOne);
});

test("a cut at the very start, and a piece with an end", () => {
  expect(through(cutOut([{ from: 0, to: 5 }], 2), 1)).toEqual({ at: 2, cut: true });
  const short: Edit = [{ from: 0, to: 10, shift: 1 }];
  expect(endOf(short)).toBe(11);
  expect(through(short, 10)).toEqual({ at: 11, cut: true });
});
