import { describe, expect, test } from "vitest";
import { obeys } from "../../test-kit/obeys.ts";
import { type Random, randomFrom } from "../../test-kit/random.ts";
import { type Digits, digitsOf, listOf, only } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { pairTerm } from "./make.ts";
import { meaningOf, propagatorOf, terms } from "./registry.ts";
import type { Domains, Propagator, Term } from "./term.ts";

const cellsFrom = (random: Random, least: number, most: number): Cell[] => {
  const count = least + random.below(most - least + 1);
  return random.shuffled([...Array(9).keys()]).slice(0, count);
};
const weight = (random: Random): number => random.pick([1, 1, 1, -1, -1, 2, 10, -10, 0]);
const digitsFrom = (random: Random, count: number, top: number): number[] =>
  Array.from({ length: count }, () => random.below(top + 1));

/** A random term of each name over digits from 0 to `top`. */
const makers: Record<Term["term"], (random: Random, top: number) => Term> = {
  different: (random, top) => {
    const cells = cellsFrom(random, 0, 4);
    const digits = digitsOf(random.shuffled([...Array(top + 1).keys()]).slice(0, cells.length + random.below(2)));
    return { term: "different", owner: "t", cells, ...(random.below(2) ? { digits } : {}) };
  },
  pair: (random, top) => {
    const [a, b] = [1 + random.below(3), random.below(top + 2)];
    return pairTerm("t", cellsFrom(random, 2, 2), (x, y) => (x * a + y) % 5 < 2 || x + y === b);
  },
  order: (random) => ({ term: "order", owner: "t", cells: cellsFrom(random, 0, 4), strict: random.below(2) === 0 }),
  sum: (random, top) => {
    const cells = cellsFrom(random, 0, 4);
    const weights = cells.map(() => weight(random));
    const equals = digitsFrom(random, cells.length, top).reduce(
      (sum, digit, k) => sum + digit * weights[k]!,
      random.below(4) === 0 ? 1 : 0,
    );
    return { term: "sum", owner: "t", cells, weights, equals };
  },
  equal: (random) => ({ term: "equal", owner: "t", cells: cellsFrom(random, 0, 4) }),
  run: (random) => ({ term: "run", owner: "t", cells: cellsFrom(random, 1, 4) }),
  contains: (random, top) => ({
    term: "contains",
    owner: "t",
    cells: cellsFrom(random, 0, 4),
    digits: digitsFrom(random, random.below(5), top),
  }),
  "same-digits": (random) => {
    const half = random.below(3);
    const [first, second] = [
      random.shuffled([0, 1, 2, 3]).slice(0, half),
      random.shuffled([2, 3, 4, 5]).slice(0, half),
    ];
    return { term: "same-digits", owner: "t", cells: [...first, ...second], half };
  },
  classes: (random, top) => {
    const cells = cellsFrom(random, 0, 4);
    return {
      term: "classes",
      owner: "t",
      cells,
      classes: cells.map(() => digitsOf(digitsFrom(random, 1 + random.below(4), top))),
    };
  },
  automaton: (random, top) => {
    const [modulus, shift] = [2 + random.below(4), random.below(top + 1)];
    return {
      term: "automaton",
      owner: "t",
      cells: cellsFrom(random, 0, 4),
      start: 0,
      next: (state, digit, index) =>
        digit === shift && index === 1 ? undefined : ((state as number) * 2 + digit) % modulus,
      ok: (state) => state === shift % modulus,
    };
  },
  table: (random, top) => {
    const cells = cellsFrom(random, 0, 4);
    return {
      term: "table",
      owner: "t",
      cells,
      rows: Array.from({ length: random.below(8) }, () => digitsFrom(random, cells.length, top)),
    };
  },
};

interface Given {
  readonly term: Term;
  readonly domains: readonly Digits[];
}

const domainsFrom = (possible: Digits[]): Domains => ({
  at: (cell) => possible[cell]!,
  keep: (cell, digits) => {
    possible[cell] = (possible[cell]! & digits) as Digits;
    return possible[cell] !== 0;
  },
});

/** The digits left at the fixed point, or undefined where it leaves none. */
const narrowed = (propagate: Propagator, before: readonly Digits[]): Digits[] | undefined => {
  const possible = [...before];
  for (let last = ""; last !== possible.join(); ) {
    last = possible.join();
    if (!propagate(domainsFrom(possible))) return undefined;
  }
  return possible;
};

/** Every assignment of the cells, a cell that comes twice with one digit. */
const assignments = (cells: readonly Cell[], domains: readonly Digits[]): number[][] =>
  cells.reduce<number[][]>(
    (rows, cell, k) =>
      rows.flatMap((row) => {
        const before = cells.indexOf(cell);
        return before < k ? [[...row, row[before]!]] : listOf(domains[cell]!).map((digit) => [...row, digit]);
      }),
    [[]],
  );

/** What enumeration leaves. */
const expected = ({ term, domains }: Given): Digits[] | undefined => {
  const rows = assignments(term.cells, domains).filter((row) => obeys(term, row));
  if (rows.length === 0) return undefined;
  return domains.map((all, cell) =>
    term.cells.includes(cell) ? digitsOf(rows.map((row) => row[term.cells.indexOf(cell)]!)) : all,
  );
};

const given = (make: (random: Random, top: number) => Term, seed: number): Given => {
  const random = randomFrom(seed);
  const top = random.pick([3, 4, 6, 8]);
  const density = 1 + random.below(3);
  const domain = (): Digits => {
    const digits = [...Array(top + 1).keys()].filter(() => random.below(4) < density);
    return digits.length === 0 ? only(random.below(top + 1)) : digitsOf(digits);
  };
  return { term: make(random, top), domains: Array.from({ length: 9 }, domain) };
};

test("every term has a meaning", () => {
  expect(terms.map(({ term }) => term)).toEqual(Object.keys(makers));
});

describe.each(terms)("$term", ({ term: name, strength }) => {
  const shown = ({ term, domains }: Given): string => JSON.stringify({ term, domains: domains.map(listOf) });
  const runs = Array.from({ length: 400 }, (_, seed) => given(makers[name], seed + 1));

  test("keeps every digit that enumeration supports, and where full no other", () => {
    let narrowings = 0;
    for (const run of runs) {
      const found = narrowed(propagatorOf(run.term), run.domains);
      const wanted = expected(run);
      if (strength === "full") expect(found, shown(run)).toEqual(wanted);
      else if (wanted)
        expect(
          found?.every((digits, cell) => (wanted[cell]! & ~digits) === 0),
          shown(run),
        ).toBe(true);
      if (wanted?.join() !== run.domains.join()) narrowings++;
    }
    expect(narrowings).toBeGreaterThan(40);
  });

  test("says of settled cells what its plain meaning says", () => {
    for (const run of runs) {
      const digits = run.domains.map((set) => 31 - Math.clz32(set));
      const found = narrowed(propagatorOf(run.term), digits.map(only));
      expect(found !== undefined, shown(run)).toBe(
        obeys(
          run.term,
          run.term.cells.map((cell) => digits[cell]!),
        ),
      );
    }
  });

  test("a propagator used again on wider domains remembers nothing", () => {
    for (const run of runs.slice(0, 100)) {
      const used = propagatorOf(run.term);
      narrowed(
        used,
        run.domains.map((set) => only(31 - Math.clz32(set))),
      );
      const wide = run.domains.map((set) => (set | 0b101) as Digits);
      expect(narrowed(used, wide), shown(run)).toEqual(narrowed(propagatorOf(run.term), wide));
    }
  });
});

const full = (count: number, low: number, high: number): Digits[] =>
  Array.from({ length: count }, () => digitsOf(Array.from({ length: high - low + 1 }, (_, k) => low + k)));
const along = (count: number): Cell[] => [...Array(count).keys()];

test("a sum of 25 cells with digits to 25 is narrowed in every word", () => {
  const cells = along(25);
  const most: Term = { term: "sum", owner: "t", cells, equals: 25 * 25 - 1 };
  expect(narrowed(propagatorOf(most), full(25, 1, 25))).toEqual(full(25, 24, 25));
  const middle: Term = { term: "sum", owner: "t", cells, equals: 325 };
  expect(narrowed(propagatorOf(middle), full(25, 1, 25))).toEqual(full(25, 1, 25));
});

test("many words and one word say the same", async () => {
  const { manyWords, oneWord } = await import("./partial-sums.ts");
  for (let seed = 1; seed <= 300; seed++) {
    const random = randomFrom(seed);
    const weights = Int32Array.from(along(5), () => random.pick([1, 1, 2, 3, 10]));
    const steps = Int32Array.from(along(5), () => 1 | random.below(512));
    const rest = random.below(32);
    const [one, many] = [Int32Array.from(steps), Int32Array.from(steps)];
    const found = oneWord(weights)(one, rest);
    expect(manyWords(weights)(many, rest)).toBe(found);
    if (found) expect(many).toEqual(one);
  }
});

test("a pill of three digits and its shaft, over 31 and with digits from 0", () => {
  const term: Term = {
    term: "sum",
    owner: "t",
    cells: [0, 1, 2, 3, 4, 5],
    weights: [100, 10, 1, -1, -1, -1],
    equals: 0,
  };
  const domains = [...full(3, 0, 31), ...full(3, 28, 31)];
  const found = narrowed(propagatorOf(term), domains)!;
  const totals = assignments([0, 1, 2], full(3, 0, 31)).filter(
    ([a, b, c]) => 100 * a! + 10 * b! + c! >= 84 && 100 * a! + 10 * b! + c! <= 93,
  );
  expect(found.slice(0, 3)).toEqual([0, 1, 2].map((k) => digitsOf(totals.map((row) => row[k]!))));
});

// checks/SOURCES.md: cell i of k lies in [i, n-k+i] on digits 1 to n.
test("a thermometer of four cells on 1 to 6 leaves 123 234 345 456", () => {
  const term: Term = { term: "order", owner: "t", cells: along(4), strict: true };
  expect(narrowed(propagatorOf(term), full(4, 1, 6))).toEqual(
    [
      [1, 2, 3],
      [2, 3, 4],
      [3, 4, 5],
      [4, 5, 6],
    ].map(digitsOf),
  );
});

test("32 cells with the digits 0 to 31 can differ, 33 cannot", () => {
  const differ = (count: number): Term => ({ term: "different", owner: "t", cells: along(count) });
  expect(narrowed(propagatorOf(differ(32)), full(32, 0, 31))).toEqual(full(32, 0, 31));
  expect(narrowed(propagatorOf(differ(33)), full(33, 0, 31))).toBeUndefined();
});

test("the meaning is found by the term", () => {
  expect(meaningOf({ term: "equal", owner: "t", cells: [] }).term).toBe("equal");
});
