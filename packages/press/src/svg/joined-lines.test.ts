import { expect, test } from "vitest";
import type { Figure } from "../scene/figure.ts";
import { joinedLines } from "./joined-lines.ts";

const line = (x: number, more: object = {}): Figure => ({
  shape: "paths",
  layer: "line",
  paths: [
    {
      points: [
        [x, 0],
        [x, 1],
      ],
    },
  ],
  pen: { paint: "clue-ink", width: 0.04 },
  of: "zipper-line/1",
  ...more,
});
const disc: Figure = { shape: "disc", layer: "line", at: [0, 0], radius: 1 };

test("strokes of one clue are one figure with all their paths in order", () => {
  expect(joinedLines([line(1), line(2), line(3)])).toEqual([
    { ...line(1), paths: [1, 2, 3].flatMap((x) => (line(x) as { paths: readonly object[] }).paths) },
  ]);
});

test.each([
  ["of another clue", [line(1), line(2, { of: "zipper-line/2" })]],
  ["of another width", [line(1), line(2, { pen: { paint: "clue-ink", width: 0.05 } })]],
  ["that are filled, whose holes would change", [line(1, { fill: "clue" }), line(2, { fill: "clue" })]],
  ["with something drawn between them", [line(1), disc, line(2)]],
] as const)("lines %s stay apart", (_, figures) => {
  expect(joinedLines(figures)).toEqual(figures);
});
