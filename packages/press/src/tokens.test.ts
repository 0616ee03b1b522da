import { describe, expect, test } from "vitest";
import { lightOf } from "./oklab.ts";
import { type Colour, cssVariables, dark, light, type Theme, themes } from "./tokens.ts";

/** WCAG 2.2, relative luminance and contrast ratio (https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio). */
const luminance = (hex: string): number => {
  const [red, green, blue] = lightOf(hex);
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
};
/** To one decimal, as the look states it. */
const contrast = (a: string, b: string): number => {
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return Math.round(((high + 0.05) / (low + 0.05)) * 10) / 10;
};

const grounds = ["sheet", "page", "desk"] as const;
/** Contrast on sheet, page and desk, light and dark: the figures of the look, which hold to one decimal. */
const figures: readonly (readonly [Colour, readonly number[], readonly number[]])[] = [
  ["ink", [16.4, 14.8, 13.3], [12.6, 14.2, 15.6]],
  ["ink-2", [8.2, 7.4, 6.6], [8.0, 9.0, 9.9]],
  ["ink-3", [6.0, 5.4, 4.8], [5.5, 6.2, 6.8]],
  ["hair", [3.0], [3.3]],
  ["pencil", [11.6, 10.5, 9.4], [11.2, 12.6, 13.9]],
  ["spruce", [10.0, 9.0, 8.0], [8.8, 9.9, 11.0]],
  ["because", [5.2, 4.7, 4.2], [6.4, 7.2, 7.9]],
  ["because-text", [7.4, 6.7, 6.0], [7.8, 8.8, 9.7]],
  ["so", [3.9, 3.5, 3.1], [5.9, 6.6, 7.3]],
  ["so-text", [6.2, 5.7, 5.1], [8.1, 9.1, 10.1]],
  ["rule-use", [3.4, 3.1], [6.6, 7.5, 8.3]],
  ["rule-use-text", [7.0, 6.3, 5.7], [8.5, 9.5, 10.5]],
  ["gone", [3.1], [4.8, 5.4, 6.0]],
  ["gone-text", [7.0, 6.3, 5.7], [7.2, 8.2, 9.0]],
  ["warn", [2.3], [6.5]],
  ["warn-text", [6.9, 6.3, 5.6], [8.6, 9.7, 10.7]],
  ["clue-ink", [6.1], [7.7]],
  ["clue-edge", [3.7], [5.4]],
];

const pairs: readonly (readonly [Colour, Colour, number, number])[] = [
  ["pencil", "wash-rain", 10.6, 8.9],
  ["pencil", "wash-weave", 9.2, 7.8],
  ["pencil", "wash-scale", 9.5, 9.4],
  ["so-text", "so-wash", 5.2, 6.9],
  ["so-text", "house", 5.1, 6.5],
  ["pencil", "house", 9.6, 8.9],
  ["pencil", "clue", 8.7, 6.2],
];

const letters: readonly Colour[] = [
  "ink",
  "ink-2",
  "pencil",
  "because-text",
  "so-text",
  "rule-use-text",
  "gone-text",
  "warn-text",
];
const lines: readonly Colour[] = ["because", "so", "rule-use", "hair", "clue-ink", "clue-edge"];

describe.each(["light", "dark"] as const)("the %s theme", (theme: Theme) => {
  const colours = themes[theme];

  test.each(figures)("%s has the contrast that the look states", (name, inLight, inDark) => {
    const stated = theme === "light" ? inLight : inDark;
    expect(stated.map((_, k) => contrast(colours[name], colours[grounds[k]!]))).toEqual(stated);
  });

  test.each(pairs)("%s on %s has the contrast that the look states", (name, ground, inLight, inDark) => {
    const stated = theme === "light" ? inLight : inDark;
    expect(contrast(colours[name], colours[ground])).toBe(stated);
  });

  test.each(letters)("%s can be read on every sheet (4.5)", (name) => {
    for (const sheet of ["sheet", "sheet-2", "sheet-3"] as const)
      expect(contrast(colours[name], colours[sheet])).toBeGreaterThanOrEqual(4.5);
  });

  test.each(lines)("%s can be made out on the sheet (3)", (name) => {
    expect(contrast(colours[name], colours.sheet)).toBeGreaterThanOrEqual(3);
  });

  test.each(["rain", "weave", "scale"] as const)("the pattern of %s can be made out on its ground", (wash) => {
    expect(contrast(colours[`wash-${wash}-line`], colours[`wash-${wash}`])).toBeGreaterThanOrEqual(3.6);
  });
});

test("every colour has a value in both themes", () => {
  expect(Object.keys(dark).sort()).toEqual(Object.keys(light).sort());
  for (const theme of Object.values(themes))
    for (const value of Object.values(theme)) expect(value).toMatch(/^#[0-9A-F]{6}$/);
});

test("a page gets every colour as a variable, light and dark", () => {
  const css = cssVariables();
  for (const [name, value] of Object.entries(light)) expect(css).toContain(`--${name}: ${value};`);
  expect(css.split('[data-theme="dark"]')[1]).toContain(`--so: ${dark.so};`);
  expect(css).toContain("--u-outline: 0.07;");
  expect(css).toContain("--tint-ink-held: 24%;");
});
