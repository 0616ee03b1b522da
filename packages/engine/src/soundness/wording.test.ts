import { describe, expect, test } from "vitest";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { compile } from "../board/compile.ts";
import { compareWording } from "./wording.ts";

const compared = (wording: string | undefined, rules: readonly string[]) =>
  compareWording(
    compile(
      puzzleOf(
        [
          "puzzle: 1",
          "title: t",
          "setter: { name: us, permission: own }",
          ...(wording === undefined ? [] : [`wording: ${JSON.stringify(wording)}`]),
          "grids:",
          "  - { id: main, size: 6 }",
          "rules:",
          ...rules.map((rule) => `  - ${rule}`),
          "",
        ].join("\n"),
      ),
    ),
  );
const unsaid = (wording: string, ...rules: string[]) => compared(wording, rules)!.unsaid.map(({ rule }) => rule);

const white = "kropke-white: [r1c1 r1c2, r2c1 r2c2]";
const black = "kropke-black: r3c1 r3c2";

test("without a wording there is nothing to compare", () => expect(compared(undefined, [white])).toBeUndefined());

test("kinds that are not said, with their rules", () =>
  expect(compared("Normal rules. Cages don't repeat.", ["cage: { cells: r5c1 r5c2 }", white, black])!.unsaid).toEqual([
    { rule: "kropke-white", ids: ["kropke-white/1", "kropke-white/2"] },
    { rule: "kropke-black", ids: ["kropke-black/1"] },
  ]));

// Sentences as setters usually write them (common practice).
test.each([
  ["White dots: consecutive.", [white]],
  ["Digits separated by black and white circles are as usual for Kropke pairs.", [white, black]],
  ["Black and white dots join consecutive digits or digits in a 1:2 ratio.", [white, black]],
  ["Digits along thermos increase from the bulb end.", ["thermometer: r1c1-r1c3"]],
  ["Cells joined by an X sum to 10.", ["xv-x: r1c1 r1c2"]],
  ["Normal XV rules.", ["xv-x: r1c1 r1c2", "xv-v: r1c3 r1c4"]],
  ["Killer rules apply.", ["cage: { cells: r1c1 r1c2 }"]],
  ["Cells a knight's move apart differ.", ["anti-knight"]],
  ["Orthogonally adjacent digits can't be consecutive.", ["non-consecutive"]],
  ["Digits on a pink line are a set of consecutive digits.", ["renban: r1c1 r1c2"]],
  ["A circle holds a digit greater than its orthogonal neighbors.", ["local-maximum: r3c3"]],
  ["Digits on a line are reads the same both ways.", ["palindrome: r1c1-r1c3"]],
  ["All dots are given.", ["all-dots-shown"]],
  ["All possible dots have been given.", ["all-dots-shown"]],
  ["Cells without a dot are neither consecutive nor in a 1:2 ratio.", ["all-dots-shown"]],
])("%s says it", (wording, rules) => expect(unsaid(wording, ...rules)).toEqual([]));

test.each([
  ["Exotic rules apply.", "xv-x: r1c1 r1c2"],
  ["White dots: consecutive. Not all dots are given.", "all-dots-shown"],
  ["The dots aren't necessarily all given; there is no negative constraint.", "all-dots-shown"],
  ["Missing dots mean nothing.", "all-dots-shown"],
  ["Barns are consecutively painted.", "all-bars-shown"],
])("%s does not say it", (wording, rule) => expect(unsaid(wording, rule)).toEqual([rule.split(":")[0]]));

describe("the setter's own rule", () => {
  const own = "own-rule: { says: The foxes hold odd digits and the hens even ones., cells: r1c1 }";
  test("is said in its own words", () =>
    expect(unsaid("Usual rules. The foxes hold odd digits, the hens even ones!", own)).toEqual([]));
  test("or is not", () => expect(unsaid("Usual rules. Foxes eat hens.", own)).toEqual(["own-rule"]));
});

describe("what only the wording has", () => {
  test("a rule about missing dots", () =>
    expect(compared("White dots are consecutive. All dots are given.", [white])!.onlySaid).toEqual([
      { rule: "all-dots-shown", says: "all dots are shown" },
    ]));
  test("not where it says the contrary, has no dots, or the file has it", () => {
    expect(compared("White dots. Not all dots are given.", [white])!.onlySaid).toEqual([]);
    expect(compared("All dots are given.", ["thermometer: r1c1-r1c3"])!.onlySaid).toEqual([]);
    expect(compared("All dots are given.", [white, "all-dots-shown"])!.onlySaid).toEqual([]);
  });
});
