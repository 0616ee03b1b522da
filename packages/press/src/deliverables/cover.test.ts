import { compile } from "@solvewright/engine";
import { puzzleOf } from "@solvewright/engine/test-kit";
import { expect, test } from "vitest";
import { coverSvg } from "./cover.ts";
import { ruleNames } from "./rule-names.ts";

const board = compile(
  puzzleOf(`puzzle: 1
title: Many Rules
grids: [{ id: main, size: 6 }]
rules:
  - cage: { cells: r1c1 r1c2, sum: 5 }
  - kropke-white: r2c1 r2c2
  - renban: r3c1-r3c3
  - thermometer: r4c1-r4c3
  - palindrome: r5c1-r5c3
  - greater-than: r6c1 r6c2
  - anti-knight: {}
`),
);

const linesOf = (svg: string): string[] => [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text!);

test("a cover names whole rules only, and says that there are more", () => {
  const lines = linesOf(coverSvg(board));
  const below = lines.slice(lines.indexOf("Rules") + 1).join(" ");
  expect(below).toMatch(/ and more$/);
  const named = below.replace(/ and more$/, "").split(", ");
  const names = ruleNames(board);
  expect(named.map((name) => name.toLowerCase())).toEqual(
    names.slice(0, named.length).map((name) => name.toLowerCase()),
  );
});
