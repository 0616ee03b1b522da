import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { type Font, openSync } from "fontkit";
import { describe, expect, test } from "vitest";
import { runsOf, widthOf, wrapped } from "./letters.ts";

const require = createRequire(import.meta.url);
const fontOf = (family: string, weight: number): Font => {
  const folder = dirname(require.resolve(`@fontsource/${family}/package.json`));
  return openSync(join(folder, "files", `${family}-latin-${weight}-normal.woff`)) as Font;
};
const besley = (weight: number): Font => fontOf("besley", weight);
const ascii = Array.from({ length: 95 }, (_, k) => String.fromCharCode(32 + k));

/** The font's own width of a text in sizes, without kerning. */
const setIn = (font: Font, text: string): number =>
  [...text].reduce((sum, letter) => sum + font.glyphForCodePoint(letter.codePointAt(0)!).advanceWidth, 0) /
  font.unitsPerEm;

describe.each([400, 800])("Besley %i", (weight) => {
  const font = besley(weight);

  test("has every letter of our table at our width, which is rounded to thousandths", () => {
    for (const letter of ascii) expect(Math.abs(widthOf(letter, weight) - setIn(font, letter))).toBeLessThan(0.0006);
  });

  test.each(["Σ", "≡", "≤", "≥", "≠"])("lacks %s, so we draw it", (letter) => {
    expect(font.hasGlyphForCodePoint(letter.codePointAt(0)!)).toBe(false);
    expect(runsOf(letter, weight)[0]).toHaveProperty("own");
  });

  test.each(["×", "’", "–", "“", "”", "·"])("has %s", (letter) => {
    expect(font.hasGlyphForCodePoint(letter.codePointAt(0)!)).toBe(true);
  });
});

describe.each([400, 800])("Commissioner %i", (weight) => {
  test("has every letter of our table at our width", () => {
    const font = fontOf("commissioner", weight);
    for (const letter of ascii)
      expect(Math.abs(widthOf(letter, weight, "desk") - setIn(font, letter))).toBeLessThan(0.0006);
  });
});

test("at the weights of pages Commissioner's words are as wide as we say, within a hundredth", () => {
  const text = "Every row, column and box holds 1 to 8 once each.";
  for (const weight of [500, 600]) {
    const [ours, theirs] = [widthOf(text, weight, "desk"), setIn(fontOf("commissioner", weight), text)];
    expect(Math.abs(ours - theirs) / theirs).toBeLessThan(0.01);
  }
});

test("between the two weights the width is within a hundredth", () => {
  const font = besley(600);
  for (const digit of "0123456789XV") expect(Math.abs(widthOf(digit, 600) - setIn(font, digit))).toBeLessThan(0.01);
});

test("Besley's tabular zero does not follow the weight, so boards do without tabular figures", () => {
  const zero = (weight: number): number => {
    const run = besley(weight).layout("0", ["tnum"]);
    return run.glyphs[0]!.bbox.width;
  };
  expect(zero(800)).toBe(zero(400));
});

test("a text is cut round our own letters, each piece where the one before ends", () => {
  const runs = runsOf("Σ13", 700);
  expect(runs.map(({ x }) => x)).toEqual([0, widthOf("Σ", 700)]);
  expect(runs[1]).toMatchObject({ text: "13" });
  expect(runsOf("13", 700)).toEqual([{ x: 0, text: "13" }]);
});

test("a sentence is broken between words and nowhere else", () => {
  const text = "Cells a knight's move apart differ.";
  const lines = wrapped(text, 560, 8);
  expect(lines.join(" ")).toBe(text);
  expect(lines.length).toBeGreaterThan(1);
  for (const line of lines) expect(widthOf(line, 560)).toBeLessThanOrEqual(8);
  expect(wrapped("Unbreakable", 560, 1)).toEqual(["Unbreakable"]);
});
