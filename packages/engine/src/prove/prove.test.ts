import { describe, expect, test } from "vitest";
import { claim } from "../../test-kit/claim.ts";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { tiny } from "../../test-kit/tiny.ts";
import { compile } from "../board/compile.ts";
import { digitsOf } from "../board/digits.ts";
import type { Claim, Relation } from "../deduce/step.ts";
import { type Definition, definitionOf } from "./definition.ts";
import { prove } from "./prove.ts";
import { needless, withoutOne } from "./small.ts";

const about = (text: string): Definition => definitionOf(compile(puzzleOf(text)));
const plain = about(tiny([]));
const nine = about(tiny([], { size: 9, regions: "boxes" }));

const proved = { verdict: "proved" };

/** The claim holds and needs each of its premises: without any one of them an assignment shows that it fails. */
const expectSmall = (whole: Claim, definition: Definition): void => {
  expect(prove(whole, definition)).toEqual(proved);
  expect(needless(whole, definition)).toEqual([]);
  for (const { without, claim: fewer } of withoutOne(whole))
    expect(prove(fewer, definition), without).toMatchObject({ verdict: "refused", counterexample: expect.anything() });
};

describe("what can be concluded", () => {
  const lastCell = {
    facts: { r1c1: [8], r1c2: [3], r1c3: [6], r1c4: [1], r1c5: [9], r1c6: [2], r1c7: [5], r1c8: [4] },
    houses: ["tiny/row/1"],
  };

  test("a cell is placed", () => {
    expectSmall(claim({ places: { r1c9: 7 } }, lastCell), nine);
    expect(prove(claim({ places: { r1c9: 6 } }, lastCell), nine)).toEqual({
      verdict: "refused",
      failed: "r1c9",
      counterexample: { r1c1: 8, r1c2: 3, r1c3: 6, r1c4: 1, r1c5: 9, r1c6: 2, r1c7: 5, r1c8: 4, r1c9: 7 },
    });
  });

  test("the only place for a digit, however wide its cell", () => {
    const seen = { r4c2: [5], r7c3: [5], r2c5: [5], r3c8: [5] };
    const houses = ["tiny/region/a", "tiny/row/2", "tiny/row/3", "tiny/column/2", "tiny/column/3"];
    expectSmall(claim({ places: { r1c1: 5 } }, { facts: seen, houses }), nine);
  });

  test("digits are removed, each of them", () => {
    const pair = { facts: { r1c1: [1, 2], r1c4: [1, 2] }, houses: ["tiny/row/1"] };
    expectSmall(claim({ removes: { r1c2: [1, 2], r1c9: [2] } }, pair), nine);
    const one = prove(claim({ removes: { r1c2: [1, 2], r1c9: [2, 3] } }, pair), nine);
    expect(one).toMatchObject({ verdict: "refused", failed: "r1c9", counterexample: { r1c9: 3 } });
  });

  test("a digit's places", () => {
    const taken = { facts: { r1c3: [1, 2], r1c4: [1, 2] }, houses: ["tiny/row/1"] };
    const spot = (cells: string[]) => ({ spots: [{ digit: 3, cells, house: "tiny/row/1" }] });
    expectSmall(claim(spot(["r1c1", "r1c2"]), taken), plain);
    const narrower = prove(claim(spot(["r1c1"]), taken), plain);
    expect(narrower).toMatchObject({ verdict: "refused", failed: "spot 3 in tiny/row/1", counterexample: { r1c2: 3 } });
  });

  test.each([
    ["a cage of 8 in three cells has a 1", "cage: { cells: r1c1 r1c2 r2c1, sum: 8 }", 1, "cage/1", 2],
    ["four of a renban in 1 to 6 hold a 3", "renban: r1c1-r1c4", 3, "renban/1", 1],
    ["and a 4", "renban: r1c1-r1c4", 4, "renban/1", 6],
  ])("%s", (_, rule, digit, house, other) => {
    const six = about(tiny([rule], { size: 6 }));
    const cells = house === "cage/1" ? ["r1c1", "r1c2", "r2c1"] : ["r1c1", "r1c2", "r1c3", "r1c4"];
    expectSmall(claim({ spots: [{ digit, cells, house }] }, { rules: [house] }), six);
    expect(prove(claim({ spots: [{ digit: other, cells, house }] }, { rules: [house] }), six).verdict).toBe("refused");
  });

  const bent = about(tiny([], { regions: '"aaab ccab ccdb dddb"' }));
  const ladder = about(
    tiny(["thermometer: r1c1 r1c2 r1c3", "cage: { cells: r1c1 r1c2, sum: 3 }", "kropke-white: [r1c1 r1c2, r1c2 r1c3]"]),
  );
  const relations: [string, Definition, Relation, Partial<Claim["because"]>, Relation][] = [
    ["same", bent, { same: ["r1c4", "r2c3"] }, { houses: ["tiny/row/1", "tiny/region/a"] }, { less: ["r1c4", "r2c3"] }],
    ["less", ladder, { less: ["r1c1", "r1c3"] }, { rules: ["thermometer/1"] }, { less: ["r1c3", "r1c1"] }],
    [
      "sum",
      ladder,
      { sum: ["r1c3", "r1c4"], is: 7 },
      { houses: ["tiny/row/1"], rules: ["cage/1"] },
      { sum: ["r1c3", "r1c4"], is: 8 },
    ],
    [
      "parity",
      ladder,
      { parity: ["r1c1", "r1c3"], is: "same" },
      { rules: ["kropke-white/1", "kropke-white/2"] },
      { parity: ["r1c1", "r1c3"], is: "different" },
    ],
  ];

  test.each(relations)("a relation: %s", (_, definition, relation, because, wrong) => {
    expectSmall(claim({ relates: [relation] }, because), definition);
    const refused = prove(claim({ relates: [wrong] }, because), definition);
    expect(refused).toMatchObject({ verdict: "refused", counterexample: expect.anything() });
  });

  test("several things at once, of which one is false", () => {
    const both = claim({ places: { r1c9: 7 }, removes: { r5c5: [1] } }, lastCell);
    expect(prove(both, nine)).toMatchObject({ verdict: "refused", failed: "r5c5" });
  });
});

describe("what can be leaned on", () => {
  const relations: [string, Relation, Record<string, number[]>, Partial<Claim>][] = [
    ["same", { same: ["r1c1", "r3c3"] }, { r3c3: [4] }, { places: { r1c1: 4 } }],
    ["less", { less: ["r1c1", "r1c2"] }, { r1c2: [1, 2] }, { places: { r1c1: 1, r1c2: 2 } }],
    ["sum", { sum: ["r1c1", "r1c2", "r4c4"], is: 12 }, {}, { places: { r1c1: 4, r4c4: 4 } }],
    ["same parity", { parity: ["r1c1", "r1c2"], is: "same" }, { r1c2: [1, 3] }, { removes: { r1c1: [2, 4] } }],
    ["other parity", { parity: ["r1c1", "r1c2"], is: "different" }, { r1c2: [2] }, { removes: { r1c1: [2, 4] } }],
  ];
  test.each(relations)("a relation: %s", (_, relation, facts, concluded) => {
    expectSmall(claim(concluded, { relations: [relation], facts }), plain);
  });

  test("a digit's places", () => {
    const spot = { digit: 3, cells: ["r1c1", "r1c2"], house: "tiny/row/1" };
    expectSmall(claim({ removes: { r2c1: [3] } }, { spots: [spot], houses: ["tiny/region/a"] }), plain);
  });

  test("wide facts", () => {
    const facts = { r1c1: [1, 2, 3], r1c2: [1, 2, 3], r1c3: [1, 2, 3] };
    const houses = ["tiny/row/1"];
    expectSmall(claim({ places: { r1c4: 4 } }, { facts, houses }), plain);
    const wider = claim({ places: { r1c4: 4 } }, { facts: { ...facts, r1c3: [1, 2, 3, 4] }, houses });
    expect(prove(wider, plain)).toMatchObject({ verdict: "refused", counterexample: { r1c3: 4 } });
  });

  test("no more than what is listed", () => {
    const bulb = about(tiny(["thermometer: r1c1 r1c2 r1c3 r1c4"]));
    expect(prove(claim({ places: { r1c1: 1 } }, { rules: ["thermometer/1"] }), bulb)).toEqual(proved);
    expect(prove(claim({ places: { r1c1: 1 } }), bulb)).toMatchObject({ counterexample: { r1c1: expect.any(Number) } });
  });

  test("reasons that contradict each other prove nothing", () => {
    const twice = { facts: { r1c1: [1], r1c2: [1] }, houses: ["tiny/row/1"] };
    for (const concluded of [{ places: { r1c3: 2 } }, { removes: { r4c4: [1] } }, { places: { r1c1: 1 } }])
      expect(prove(claim(concluded, twice), plain)).toEqual({ verdict: "refused", failed: "premises" });
    expect(prove(claim({ removes: { r4c4: [1] } }, { facts: { r1c1: [] } }), plain)).toEqual({
      verdict: "refused",
      failed: "premises",
    });
  });

  test("a contradiction is proved where nothing obeys the reasons, and claims nothing else", () => {
    const twice = { facts: { r1c1: [1], r1c2: [1] }, houses: ["tiny/row/1"] };
    expect(prove(claim({ contradiction: true }, twice), plain)).toEqual(proved);
    expect(prove(claim({ contradiction: true, places: { r1c3: 2 } }, twice), plain).verdict).toBe("refused");
    const apart = { facts: { r1c1: [1], r2c3: [1] }, houses: ["tiny/row/1"] };
    expect(prove(claim({ contradiction: true }, apart), plain)).toMatchObject({
      failed: "contradiction",
      counterexample: { r1c1: 1, r2c3: 1 },
    });
  });
});

describe("whole-grid rules", () => {
  const spaced = about(tiny(["non-consecutive", "anti-knight"], { size: 3 }));

  test("bind the cells that are touched", () => {
    expectSmall(claim({ removes: { r2c3: [2] } }, { facts: { r1c1: [2] }, rules: ["anti-knight/1"] }), spaced);
  });

  test("bind no cell between them", () => {
    const through = claim({ removes: { r1c3: [2] } }, { facts: { r1c1: [1] }, rules: ["non-consecutive/1"] });
    expect(prove(through, spaced)).toEqual({
      verdict: "refused",
      failed: "r1c3",
      counterexample: { r1c1: 1, r1c3: 2 },
    });
    const touching = claim(
      { removes: { r1c3: [2] } },
      { facts: { r1c1: [1], r1c2: [1, 2, 3] }, rules: ["non-consecutive/1"] },
    );
    expect(prove(touching, spaced)).toEqual(proved);
  });

  test("hold each digit once only where all cells are touched", () => {
    const crossed = about(tiny(["diagonals"], { regions: "none" }));
    const facts = { r1c1: [1, 2, 3], r2c2: [1, 2, 3], r3c3: [1, 2, 3] };
    const some = { r1c1: [1], r2c2: [2] };
    expect(prove(claim({ places: { r4c4: 4 } }, { facts, rules: ["diagonals/1"] }), crossed)).toEqual(proved);
    expect(prove(claim({ places: { r4c4: 4 } }, { facts: some, rules: ["diagonals/1"] }), crossed).verdict).toBe(
      "refused",
    );
    expectSmall(claim({ removes: { r4c4: [1, 2] } }, { facts: some, rules: ["diagonals/1"] }), crossed);
    expectSmall(
      claim({ places: { r4c4: 4 } }, { facts: { r1c1: [1], r2c2: [2], r3c3: [3] }, houses: ["tiny/diagonal/down"] }),
      crossed,
    );
  });
});

describe("overlapping grids", () => {
  const two = about(
    tiny(
      [],
      [
        { id: "north", size: 4 },
        { id: "south", size: 6, at: "r3c3", regions: "boxes" },
      ],
    ),
  );

  test("a cell has the digits that all its grids allow", () => {
    expectSmall(claim({ removes: { r3c3: [5, 6] } }), two);
    expect(prove(claim({ removes: { r3c3: [4] } }), two).verdict).toBe("refused");
    expect(prove(claim({ removes: { r3c5: [5] } }), two).verdict).toBe("refused");
  });

  test("what the smaller grid can't hold goes elsewhere", () => {
    const spot = { digit: 5, cells: ["r3c5", "r3c6", "r3c7", "r3c8"], house: "south/row/1" };
    expectSmall(claim({ spots: [spot] }, { houses: ["south/row/1"], limits: ["r3c3", "r3c4"] }), two);
  });

  test("what the smaller grid leaves", () => {
    const lower = { r3c5: [1, 2, 3, 4], r4c5: [1, 2, 3, 4] };
    expectSmall(claim({ removes: lower }, { houses: ["south/region/a"] }), two);
    expect(prove(claim({ removes: { r3c5: [5] } }, { houses: ["south/region/a"] }), two).verdict).toBe("refused");
  });
});

describe("counts", () => {
  const cages = about(
    tiny(
      [
        "cage: [{ cells: r1c1 r1c2 r1c3, sum: 15 }, { cells: r1c4 r1c5, sum: 5 }, { cells: r1c6 r1c7 r2c7, sum: 17 }]",
        "cage: { cells: r1c8-r1c9 r2c9, sum: 19 }",
      ],
      { size: 9, regions: "boxes" },
    ),
  );
  const names = { houses: ["tiny/row/1"], rules: ["cage/1", "cage/2", "cage/3", "cage/4"] };
  const counts = [{ plus: names.houses, minus: names.rules }];

  test("a house without its cages: what sticks out is the difference", () => {
    expectSmall(claim({ relates: [{ sum: ["r2c7", "r2c9"], is: 11 }] }, { ...names, counts }), cages);
    expect(prove(claim({ relates: [{ sum: ["r2c7", "r2c9"], is: 12 }] }, { ...names, counts }), cages).verdict).toBe(
      "refused",
    );
  });

  test("are no premise: what they name must be listed", () => {
    const unlisted = { houses: names.houses, rules: ["cage/1", "cage/2", "cage/3"], counts };
    const verdict = prove(claim({ relates: [{ sum: ["r2c7", "r2c9"], is: 11 }] }, unlisted), cages);
    expect(verdict).toMatchObject({ verdict: "refused", counterexample: expect.anything() });
    const lying = [{ plus: ["tiny/row/1"], minus: ["cage/1"] }];
    expect(prove(claim({ places: { r1c4: 1 } }, { ...names, counts: lying }), cages).verdict).toBe("refused");
  });

  const bulging = about(
    tiny([], {
      size: 9,
      regions: '"aaabbbccc aaabbbccc aaabbbccd eeefffdcd eeefffddd eeefffddd ggghhhiii ggghhhiii ggghhhiii"',
    }),
  );
  const houses = ["row/1", "row/2", "row/3", "region/a", "region/b", "region/c"].map((id) => `tiny/${id}`);
  const rowsLessRegions = [{ plus: houses.slice(0, 3), minus: houses.slice(3) }];
  const oneInOneOut = (relation: Relation): Claim => claim({ relates: [relation] }, { houses });
  const counted = (of: Claim): Claim => ({ ...of, because: { ...of.because, counts: rowsLessRegions } });

  test("of houses alone say how often each digit stands on each side", () => {
    const same = oneInOneOut({ same: ["r3c9", "r4c8"] });
    expectSmall(counted(same), bulging);
    expect(prove(counted(same), bulging, 100)).toEqual(proved);
    expect(prove(same, bulging, 100).verdict).toBe("too big");
    expect(prove(counted(oneInOneOut({ less: ["r3c9", "r4c8"] })), bulging).verdict).toBe("refused");
  });
});

describe("budget", () => {
  test("is told when it runs out", () => {
    const houses = [1, 2, 3].flatMap((k) => [`tiny/row/${k}`, `tiny/column/${k}`]);
    const hard = claim({ removes: { r1c1: [1] } }, { houses });
    expect(prove(hard, nine, 3)).toEqual({ verdict: "too big", failed: "r1c1" });
    expect(prove(hard, nine).verdict).toBe("refused");
  });
});

describe("form", () => {
  const strange: [string, Claim][] = [
    ["no cell r0c1", claim({ places: { r0c1: 1 } })],
    ["no cell r9c9", claim({ places: { r1c1: 1 } }, { facts: { r9c9: [1] } })],
    ["no cell x", claim({ relates: [{ same: ["x", "r1c1"] }] })],
    ["not all digits: 33 in r1c1", claim({ removes: { r1c1: [33] } })],
    ["not all digits: 1.5 in r1c1", claim({ places: { r1c1: 1.5 } })],
    ["no house tiny/row/5", claim({ places: { r1c1: 1 } }, { houses: ["tiny/row/5"] })],
    ["no rule cage/1", claim({ places: { r1c1: 1 } }, { rules: ["cage/1"] })],
    ["no house or rule nowhere", claim({ spots: [{ digit: 1, cells: ["r1c1"], house: "nowhere" }] })],
    [
      "spot 1: not all of its cells lie in tiny/row/1",
      claim({ spots: [{ digit: 1, cells: ["r1c1", "r2c1"], house: "tiny/row/1" }] }),
    ],
    ["nothing is claimed", claim({}, { houses: ["tiny/row/1"] })],
    ["nothing is claimed", claim({ removes: { r1c1: [] } })],
  ];
  test.each(strange)("%s", (failed, wrong) => expect(prove(wrong, plain)).toEqual({ verdict: "refused", failed }));

  test("digits up to 31", () => {
    const high = about(tiny(["cage: { cells: r1c1 r2c2, sum: 61 }"], { digits: "28-31" }));
    const because = { facts: { r1c1: [31] }, rules: ["cage/1"] };
    expectSmall(claim({ places: { r2c2: 30 } }, because), high);
    expectSmall(
      claim({ places: { r1c4: 31 } }, { facts: { r1c1: [28], r1c2: [29], r1c3: [30] }, houses: ["tiny/row/1"] }),
      high,
    );
  });
});

describe("a scope with more states than can be looked at", () => {
  const cells = Array.from({ length: 12 }, (_, cell) => cell);
  const names = cells.map((cell) => `r1c${cell + 1}`);
  const digits = digitsOf([1, 2, 3, 4, 5, 6, 7, 8, 9]);
  const remembering: Definition = {
    names,
    cellOf: new Map(names.map((name, cell) => [name, cell])),
    domains: cells.map(() => digits),
    houses: new Map(),
    rules: new Map([
      [
        "all/1",
        {
          cells,
          wholeGrid: false,
          scopes: [
            { cells, start: "", next: (read, digit) => `${read}${digit}`, ok: (read) => `${read}`.endsWith("9") },
          ],
        },
      ],
    ]),
  };

  test("waits until its cells are settled", () => {
    const last = claim({ places: { r1c12: 9 } }, { rules: ["all/1"] });
    expect(prove(last, remembering)).toMatchObject({ verdict: "too big" });
    const facts = Object.fromEntries(names.slice(0, 11).map((name) => [name, [1]]));
    expect(prove({ ...last, because: { ...last.because, facts } }, remembering)).toEqual(proved);
    const wrong = claim({ places: { r1c12: 8 } }, { rules: ["all/1"], facts });
    expect(prove(wrong, remembering)).toMatchObject({ verdict: "refused", counterexample: { r1c12: 9 } });
  });
});
