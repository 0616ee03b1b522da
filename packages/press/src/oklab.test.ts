import { expect, test } from "vitest";
import { hueOf, mixed, oklabOf } from "./oklab.ts";

/** What Chromium 156 paints for `color-mix(in oklab, A S%, B)` (CSS Color 5), read back from a canvas. */
const painted = [
  ["#7a9e5b", 62, "#5A645D", "#6e885d"],
  ["#7a9e5b", 40, "#DDE0D8", "#b5c6a6"],
  ["#8050c0", 40, "#46524B", "#5d557a"],
  ["#c03030", 13, "#DDE0D8", "#ddcbc2"],
  ["#2060d0", 24, "#B4BEB6", "#91aac0"],
  ["#ff0000", 50, "#0000ff", "#8c53a2"],
  ["#ffffff", 50, "#000000", "#636363"],
] as const;

const channels = (hex: string): number[] => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));

test.each(painted)("%s at %i %% with %s is what a browser paints", (one, percent, other, expected) => {
  const ours = channels(mixed(one, other, percent / 100));
  const off = channels(expected).map((channel, k) => Math.abs(channel - ours[k]!));
  expect(Math.max(...off)).toBeLessThanOrEqual(1);
});

test("white is all light and no colour", () => {
  const { l, a, b } = oklabOf("#ffffff");
  expect([l, a, b].map((x) => Math.round(x * 1000) / 1000 + 0)).toEqual([1, 0, 0]);
});

test("greys have no hue", () => {
  expect(hueOf("#808080")).toBeUndefined();
  expect(hueOf("#808890")).toBeUndefined();
});
