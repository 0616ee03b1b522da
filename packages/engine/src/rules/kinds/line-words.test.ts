import { expect, test } from "vitest";
import { instanceOn } from "../../../test-kit/instance.ts";
import { puzzleOf } from "../../../test-kit/puzzles.ts";
import { compile } from "../../board/compile.ts";
import type { Bound, Named, Words } from "../contract.ts";
import { kindNamed } from "../registry.ts";
import { entropicLine } from "./entropic-line.ts";

const lines = [
  "thermometer",
  "slow-thermometer",
  "arrow",
  "double-arrow",
  "palindrome",
  "renban",
  "whisper",
  "between-line",
  "lockout-line",
  "region-sum-line",
  "sum-line",
  "modular-line",
  "entropic-line",
  "parity-line",
  "zipper-line",
  "nabner",
  "progression",
];

const casesOf = async (name: string) => (await import(`./${name}.cases.ts`)).cases;
const wordsOn = (text: string): Words[] =>
  compile(puzzleOf(text)).rules.map(({ kind, instance }) => kind.words(instance));
const sentences = (text: string): string[] => text.split(/(?<=[.])\s+/);
const words = (sentence: string): number => sentence.split(/\s+/).length;

test.each(lines)("the words of %s can be spoken", async (name) => {
  const { boards, example } = await casesOf(name);
  for (const { rule, title, noun, plural, called = noun, holds, at } of [...boards, example.puzzle].flatMap(wordsOn)) {
    for (const sentence of sentences(rule)) {
      expect(words(sentence), sentence).toBeLessThanOrEqual(20);
      expect(sentence).toMatch(/^[A-Z0-9].*\.$/);
    }
    expect(sentences(rule).length).toBeLessThanOrEqual(3);
    expect(words(rule), rule).toBeLessThanOrEqual(40);
    expect([noun, plural, called, holds].filter((phrase) => !/^[a-z]/.test(phrase))).toEqual([]);
    expect(called.startsWith(noun)).toBe(true);
    expect(title).toMatch(/^[A-Z]/);
    expect(at.length).toBeGreaterThan(0);
  }
});

const ruleOf = (name: string, value: unknown, size: number): string => {
  const kind = kindNamed(name)!;
  return kind.words(instanceOn(kind, value, size) as Bound & Named).rule;
};

test("a rule says the number and the parts that are meant", () => {
  expect(ruleOf("whisper", "r1c1 r1c2", 9)).toBe(
    "Digits that are neighbours along a whisper line differ by at least 5.",
  );
  expect(ruleOf("entropic-line", "r1c1-r1c3", 9)).toContain("Low is 1 to 3, middle is 4 to 6 and high is 7 to 9.");
  expect(ruleOf("entropic-line", "r1c1-r1c3", 6)).toContain("Low is 1 or 2, middle is 3 or 4 and high is 5 or 6.");
  expect(ruleOf("modular-line", { cells: "r1c1 r1c2", by: 2 }, 6)).toBe(
    "Any two cells in a row on a modular line leave different remainders when divided by 2. So they hold one each of 1 3 5 and 2 4 6.",
  );
});

test("a modular line of many digits leaves its sets unsaid", () => {
  expect(ruleOf("modular-line", "r1c1-r1c3", 9)).toContain("So they hold one each of 1 4 7, 2 5 8 and 3 6 9.");
  expect(ruleOf("modular-line", "r1c1-r1c3", 16)).not.toContain("one each");
});

test.each([
  ["r1c1 r1c2", "r2c1-r4c1 r4c2-r4c4", "from left to right"],
  ["r1c2 r1c1", "r2c1-r4c1 r4c2-r4c4", "from right to left"],
  ["r1c1 r2c1", "r3c1 r4c1 r4c2-r4c4", "from top to bottom"],
  ["r2c1 r1c1", "r3c1 r4c1 r4c2-r4c4", "from bottom to top"],
  ["r2c1 r1c2", "r3c2 r4c1 r4c2-r4c4", "from bottom to top"],
])("a pill %s is read in its order", (total, along, way) => {
  expect(ruleOf("arrow", { total, along }, 4)).toContain(`The two digits there are read ${way} as one number.`);
});

test("the parts of an entropic line on many scattered digits are said by their ends", () => {
  const digits = [0, 1, 3, 4, 6, 7, 9, 10, 12, 13, 15, 16];
  const twelve = { id: "one", called: "the grid", size: 12, row: 1, column: 1, digits };
  const { rule } = entropicLine.words(instanceOn(entropicLine, "r1c1-r1c3", [twelve]));
  expect(rule).toContain("Low is 0 to 4, middle is 6 to 10 and high is 12 to 16.");
  expect(sentences(rule).filter((sentence) => words(sentence) > 20)).toEqual([]);
});

const manyAlong = "r4c2-r4c9 r5c9-r5c1 r6c1-r6c9 r7c9-r7c1";

test.each([
  ["r2c1 r3c2 r2c3", "from left to right"],
  ["r2c1 r2c2 r3c2", "from top to bottom"],
])("a bent pill %s is read from its first cell to its last", (total, way) => {
  const rule = ruleOf("arrow", { total, along: `r3c3 ${manyAlong}` }, 9);
  expect(rule).toContain(`The three digits there are read ${way} as one number.`);
});
