import { describe, expect, test } from "vitest";
import { claim, subStep } from "../../test-kit/claim.ts";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { tiny } from "../../test-kit/tiny.ts";
import { compile } from "../board/compile.ts";
import type { Because, Claim, Step } from "../deduce/step.ts";
import { definitionOf } from "./definition.ts";
import { prove } from "./prove.ts";
import { needless } from "./small.ts";

const plain = definitionOf(compile(puzzleOf(tiny([]))));
const proved = { verdict: "proved" };

// 1 in the corner makes r1c2 a 2, so r1c3 a 3, and r3c1 a 3; between them these bar every 3 of the far box.
const outside = {
  facts: { r1c2: [1, 2], r1c3: [2, 3], r3c1: [1, 3], r4c4: [1, 2, 4] },
  houses: ["tiny/row/1", "tiny/column/1", "tiny/row/3", "tiny/column/3", "tiny/region/d"],
};
const first = subStep("1.1", { places: { r1c2: 2 } }, { facts: { r1c1: [1], r1c2: [1, 2] }, houses: ["tiny/row/1"] });
const right = subStep("1.2", { places: { r1c3: 3 } }, { facts: { r1c2: [2], r1c3: [2, 3] }, houses: ["tiny/row/1"] });
const below = subStep(
  "1.3",
  { places: { r3c1: 3 } },
  { facts: { r1c1: [1], r3c1: [1, 3] }, houses: ["tiny/column/1"] },
);
const clash = {
  facts: { r1c3: [3], r3c1: [3], r4c4: [1, 2, 4] },
  houses: ["tiny/row/3", "tiny/column/3", "tiny/region/d"],
};
const end = subStep("1.4", { contradiction: true }, clash);

const whatIf = (more: Partial<Claim> = {}, because: Partial<Because> = {}): Claim =>
  claim(
    { removes: { r1c1: [1] }, assume: { r1c1: 1 }, steps: [first, right, below, end], ...more },
    { ...outside, ...because },
  );

const failed = (of: Claim): string => {
  const verdict = prove(of, plain);
  return verdict.verdict === "refused" ? verdict.failed : verdict.verdict;
};

describe("a what-if", () => {
  test("is proved by its sub-steps and needs each of its premises and sub-steps", () => {
    expect(prove(whatIf(), plain)).toEqual(proved);
    expect(needless(whatIf(), plain)).toEqual([]);
  });

  test("agrees with a direct proof", () => {
    expect(prove(claim({ removes: { r1c1: [1] } }, outside), plain)).toEqual(proved);
  });

  test("places the only other digit", () => {
    const facts = { ...outside.facts, r1c1: [1, 2] };
    expect(prove(whatIf({ removes: {}, places: { r1c1: 2 } }, { facts }), plain)).toEqual(proved);
    expect(needless(whatIf({ removes: {}, places: { r1c1: 2 } }, { facts }), plain)).toEqual([]);
    expect(needless(whatIf({}, { facts }), plain)).toEqual(["fact r1c1"]);
  });

  test("tells what it does not need", () => {
    const spare = subStep("1.5", { removes: { r1c4: [1] } }, { facts: { r1c1: [1] }, houses: ["tiny/row/1"] });
    const wordy = subStep(
      "1.1",
      { places: { r1c2: 2 } },
      {
        facts: { r1c1: [1], r1c2: [1, 2] },
        houses: ["tiny/row/1", "tiny/region/d"],
      },
    );
    expect(needless(whatIf({ steps: [first, right, spare, below, end] }), plain)).toEqual(["step 1.5"]);
    expect(needless(whatIf({ steps: [wordy, right, below, end] }), plain)).toEqual(["1.1: house tiny/region/d"]);
    expect(needless(whatIf({}, { rules: [], houses: [...outside.houses, "tiny/row/2"] }), plain)).toEqual([
      "house tiny/row/2",
    ]);
  });
});

describe("is refused", () => {
  const swapped = (k: number, step: Step): Claim => whatIf({ steps: [first, right, below, end].with(k, step) });
  const { r4c4: _, ...fewerFacts } = outside.facts;

  test.each<[string, Claim, string]>([
    ["without sub-steps", whatIf({ steps: [] }), "the last sub-step is no contradiction"],
    ["without a contradiction at the end", whatIf({ steps: [first, right] }), "the last sub-step is no contradiction"],
    ["with one before the end", whatIf({ steps: [first, end, end] }), "1.4: a contradiction before the end"],
    ["when it tries two cells", whatIf({ assume: { r1c1: 1, r2c2: 1 } }), "a what-if tries one cell"],
    ["when it tries none", whatIf({ assume: {} }), "a what-if tries one cell"],
    ["about another cell", whatIf({ removes: { r1c2: [1] } }), "a what-if concludes about its own cell only"],
    ["about more than the digit tried", whatIf({ removes: { r1c1: [1, 2] } }), "r1c1"],
    ["about another digit", whatIf({ removes: { r1c1: [2] } }), "r1c1"],
    ["when it places one of several others", whatIf({ removes: {}, places: { r1c1: 2 } }), "r1c1"],
    ["when it claims nothing", whatIf({ removes: {} }), "nothing is claimed"],
    [
      "when it is to end in itself",
      whatIf({ removes: {}, contradiction: true }),
      "a what-if is no contradiction itself",
    ],
    [
      "when a house is not listed",
      whatIf({}, { houses: outside.houses.slice(1) }),
      "1.1: house tiny/row/1 is not listed outside",
    ],
    ["when an outside fact is not listed", whatIf({}, { facts: fewerFacts }), "1.4: fact r4c4"],
    [
      "when a fact is narrower than listed",
      whatIf({}, { facts: { ...outside.facts, r1c3: [2, 3, 4] } }),
      "1.2: fact r1c3",
    ],
    ["when sub-steps are missing", whatIf({ steps: [below, end] }), "1.4: fact r1c3"],
    ["when a sub-step is false", swapped(0, { ...first, places: { r1c2: 1 } }), "1.1: r1c2"],
    ["when a sub-step names a strange cell", swapped(0, { ...first, places: { r9c9: 1 } }), "1.1: no cell r9c9"],
    [
      "when the end is none",
      swapped(3, { ...end, because: { ...end.because, houses: ["tiny/row/3"] } }),
      "1.4: contradiction",
    ],
  ])("%s", (_, wrong, reason) => expect(failed(wrong)).toBe(reason));

  test("with the counterexample of a false sub-step", () => {
    const wrong = swapped(0, { ...first, places: { r1c2: 1 } });
    expect(prove(wrong, plain)).toMatchObject({ counterexample: { r1c1: 1, r1c2: 2 } });
  });

  test("from outside reasons that contradict each other", () => {
    const facts = { ...outside.facts, r2c2: [1], r2c3: [1] };
    expect(failed(whatIf({}, { facts, houses: [...outside.houses, "tiny/row/2"] }))).toBe("premises");
  });
});

describe("inside a what-if", () => {
  const also = (...steps: Step[]): string =>
    failed(whatIf({ steps: [first, right, ...steps, below, end] }, { houses: [...outside.houses, "tiny/region/a"] }));

  test("what is placed is seen through listed houses only", () => {
    const seeing = (facts: Record<string, number[]>): Step =>
      subStep("1.x", { removes: { r2c2: [1] } }, { facts: { r1c1: [1], ...facts }, houses: ["tiny/region/a"] });
    expect(also(seeing({ r1c4: [2, 4] }))).toBe("proved"); // 1, 2 and 3 stand in row 1
    expect(also(seeing({ r1c4: [4] }))).toBe("proved");
    expect(also(seeing({ r1c4: [1, 2, 3] }))).toBe("1.x: fact r1c4");
    expect(also(seeing({ r2c1: [3, 4] }))).toBe("proved"); // 1 and 2 stand in region a
    expect(also(seeing({ r2c1: [4] }))).toBe("1.x: fact r2c1");
    expect(also(seeing({ r2c4: [1, 2, 4] }))).toBe("1.x: fact r2c4"); // region b is not listed
  });

  test("a cell with one digit left is seen only once it is placed", () => {
    const early = subStep("1.x", { removes: { r2c2: [2] } }, { facts: { r1c2: [2] }, houses: ["tiny/region/a"] });
    const seen = subStep(
      "1.y",
      { removes: { r2c2: [3] } },
      { facts: { r2c1: [3, 4], r2c2: [3, 4] }, houses: ["tiny/region/a"] },
    );
    const steps = (...some: Step[]): string =>
      failed(whatIf({ steps: [...some, below, end] }, { houses: [...outside.houses, "tiny/region/a"] }));
    expect(steps(early, right)).toBe("proved");
    expect(steps(seen, first, right)).toBe("1.y: fact r2c1");
  });

  const spot = (...cells: string[]) => ({ digit: 3, cells, house: "tiny/region/d" });

  test("a spot is known from an earlier sub-step, from outside, or from a listed complete house", () => {
    const found = subStep(
      "1.x",
      { spots: [spot("r3c4", "r4c4")] },
      { facts: { r1c3: [3] }, houses: ["tiny/column/3", "tiny/region/d"] },
    );
    const leaning = (...cells: string[]): Step =>
      subStep("1.y", { removes: { r3c4: [1, 2, 4] } }, { facts: { r4c4: [1, 2, 4] }, spots: [spot(...cells)] });
    expect(also(found, leaning("r3c4", "r4c4"))).toBe("proved");
    expect(also(leaning("r3c4", "r4c4"))).toBe("proved"); // r1c3 is placed, so column 3 leaves no other cell of the box
    expect(also(found, leaning("r3c4"))).toBe("proved"); // r4c4 has no 3
    expect(also(found, leaning("r4c4"))).toBe("1.y: spot 3 in tiny/region/d");
    const outer = { ...outside, houses: [...outside.houses] };
    const steps = [leaning("r3c4", "r4c4"), first, right, below, end];
    expect(failed(whatIf({ steps }, outer))).toBe("1.y: spot 3 in tiny/region/d");
    expect(failed(whatIf({ steps }, { ...outer, spots: [spot("r3c4")] }))).toBe("proved");
  });

  test("no spot is known of a digit that its house need not hold", () => {
    const column = plain.houses.get("tiny/column/4")!;
    const short = { ...column, cells: column.cells.slice(0, 3), complete: false };
    const ring = { ...plain, houses: new Map([...plain.houses, ["short/1", short]]) };
    const lies = (digit: number, house: string): Claim => {
      const nowhere = { digit, cells: ["r1c4"], house };
      const closing = subStep("1.1", { contradiction: true }, { facts: { r1c4: [1] }, spots: [nowhere] });
      return claim(
        { removes: { r1c4: [1] }, assume: { r1c4: 1 }, steps: [closing] },
        { houses: [house], facts: without },
      );
    };
    const without = { r2c4: [1, 2, 3], r3c4: [1, 2, 3] };
    expect(prove(lies(4, "short/1"), ring)).toEqual({
      verdict: "refused",
      failed: "1.1: spot 4 in short/1",
    });
    expect(prove(lies(9, "tiny/row/1"), ring)).toEqual({ verdict: "refused", failed: "1.1: spot 9 in tiny/row/1" });
  });

  test("a relation is known as it was said, its cells in any order", () => {
    const sum = (...cells: string[]) => ({ sum: cells, is: 3 });
    const said = subStep("1.x", { relates: [sum("r1c2", "r1c1")] }, { facts: { r1c1: [1], r1c2: [2] } });
    const leaning = (...cells: string[]): Step =>
      subStep("1.y", { removes: { r1c2: [1] } }, { facts: { r1c1: [1] }, relations: [sum(...cells)] });
    expect(also(said, leaning("r1c1", "r1c2"))).toBe("proved");
    expect(also(leaning("r1c1", "r1c2"))).toBe("1.y: relation r1c1 + r1c2 = 3");
    expect(also(said, leaning("r1c2", "r2c2"))).toBe("1.y: relation r1c2 + r2c2 = 3");
  });

  // With 1 at r1c1: a 3 at r4c3 would clash with the 3 that r1c3 has become.
  const inner: Step = {
    ...subStep("1.x", { removes: { r4c3: [3] } }, { facts: { r1c3: [3] }, houses: ["tiny/column/3"] }),
    assume: { r4c3: 3 },
    steps: [subStep("1.x.1", { contradiction: true }, { facts: { r1c3: [3], r4c3: [3] }, houses: ["tiny/column/3"] })],
  };

  test("another what-if may stand", () => {
    expect(also(inner)).toBe("proved");
    expect(failed(whatIf({ steps: [inner, first, right, below, end] }))).toBe("1.x: fact r1c3");
    const hollow: Step = { ...inner, because: { ...inner.because, facts: {} } };
    expect(also(hollow)).toBe("1.x: 1.x.1: fact r1c3");
    expect(needless(whatIf({ steps: [first, right, inner, below, end] }), plain)).toEqual(["step 1.x"]);
  });

  test("another what-if may have reasons that only the assumption makes clash, another sub-step may not", () => {
    const facts = { r1c1: [1], r3c1: [1] };
    const houses = ["tiny/column/1"];
    const steps = [subStep("1.2.1", { contradiction: true }, { facts, houses })];
    const nested: Step = {
      ...subStep("1.2", { removes: { r4c4: [1] } }, { facts, houses }),
      assume: { r4c4: 1 },
      steps,
    };
    const plainly = subStep("1.2", { removes: { r4c4: [1] } }, { facts, houses });
    const closing = subStep("1.3", { contradiction: true }, { facts, houses });
    const outer = (...some: Step[]): Claim =>
      claim({ removes: { r1c1: [1] }, assume: { r1c1: 1 }, steps: some }, { facts: { r3c1: [1] }, houses });
    expect(failed(outer(closing))).toBe("proved");
    expect(failed(outer(nested, closing))).toBe("proved");
    expect(failed(outer(plainly, closing))).toBe("1.2: premises");
    expect(prove(nested, plain)).toEqual({ verdict: "refused", failed: "premises" });
  });
});
