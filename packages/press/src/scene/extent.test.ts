import { expect, test } from "vitest";
import { extentOf, shared, together } from "./extent.ts";

test("a stroke reaches half its width beyond", () => {
  expect(
    extentOf({ shape: "disc", layer: "line", at: [1, 1], radius: 0.5, pen: { paint: "ink", width: 0.2 } }),
  ).toEqual({
    left: 0.4,
    top: 0.4,
    right: 1.6,
    bottom: 1.6,
  });
});

test.each([
  ["start", 2],
  ["middle", 1],
  ["end", 0],
] as const)("a text anchored at its %s lies on its side of the point", (anchor, halves) => {
  const { left, right } = extentOf({ shape: "text", layer: "cage", at: [5, 5], text: "13", size: 1, anchor });
  expect((left + right) / 2 - 5).toBeCloseTo(((halves - 1) * (right - left)) / 2);
});

test("the area that two rectangles share is that of their overlap, never negative", () => {
  const square = (left: number, top: number) => ({ left, top, right: left + 2, bottom: top + 2 });
  expect(shared(square(0, 0), square(1, 1))).toBe(1);
  expect(shared(square(0, 0), square(3, 3))).toBe(0);
});

test("nothing has no extent", () => {
  expect(together([])).toBeUndefined();
});
