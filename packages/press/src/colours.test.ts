import { expect, test } from "vitest";
import { coloursOf, isHeld, variables } from "./colours.ts";
import { oklabOf } from "./oklab.ts";
import { dark, light } from "./tokens.ts";

test.each([
  ["#0060c0", true],
  ["#1e90ff", true],
  ["#c03030", true],
  ["#ff8000", true],
  ["#7a9e5b", false],
  ["#8040c0", false],
  ["#d04090", false],
  ["#707070", false],
])("%s could be taken for because or so: %s", (tint, held) => {
  expect(isHeld(tint)).toBe(held);
});

const apart = (a: string, b: string): number => {
  const [x, y] = [oklabOf(a), oklabOf(b)];
  return Math.hypot(x.l - y.l, x.a - y.a, x.b - y.b);
};

test("a held tint stays nearer to the clue's own colour", () => {
  const colours = coloursOf("light");
  const line = (tint: string): number =>
    apart(colours({ colour: "clue-ink", tint }), light["clue-ink"]) / apart(tint, light["clue-ink"]);
  expect(line("#7a9e5b")).toBeCloseTo(0.62, 1);
  expect(line("#0060c0")).toBeCloseTo(0.24, 1);
});

test("a colour is the theme's own value or its variable", () => {
  expect(coloursOf("dark")("so")).toBe(dark.so);
  expect(variables("so-text")).toBe("var(--so-text)");
  expect(variables({ colour: "clue", tint: "#7a9e5b" })).toBe("color-mix(in oklab, #7a9e5b 40%, var(--clue))");
});
