import { placeOf } from "@solvewright/engine";
import { describe, expect, test } from "vitest";
import type { Figure } from "../scene/figure.ts";
import { ringFigures, spansBetween } from "./rings.ts";

const places = (names: string) => names.split(" ").map((name) => placeOf(name)!);

describe("a circle opened in some directions", () => {
  test("left and right: an arc above and one below", () => {
    const spans = spansBetween([0, Math.PI]);
    expect(spans).toHaveLength(2);
    for (const [from, to] of spans) {
      expect(Math.abs(Math.sin((from + to) / 2))).toBeCloseTo(1);
      expect(to - from).toBeLessThan(Math.PI - 0.8);
    }
  });

  test("nowhere: the whole of it", () => {
    expect(spansBetween([]).reduce((sum, [from, to]) => sum + to - from, 0)).toBeCloseTo(2 * Math.PI);
  });
});

const dot: Figure = { shape: "disc", layer: "edge", at: [1, 0.5], radius: 0.14, fill: "ink" };
const line: Figure = {
  shape: "paths",
  layer: "line",
  paths: [
    {
      points: [
        [0.5, 0.5],
        [2.5, 0.5],
      ],
    },
  ],
  pen: { paint: "clue-ink", width: 0.07 },
};

test("a small clue is ringed a tenth clear of it, open toward its cells", () => {
  const [, ring] = ringFigures({ figures: [dot], cells: places("r1c1 r1c2") });
  expect(ring).toMatchObject({ shape: "arcs", at: [1, 0.5] });
  if (ring?.shape !== "arcs") throw new Error("arcs expected");
  expect(ring.radii[0] - ring.pen!.width / 2 - 0.14).toBeCloseTo(0.1);
  for (const [from, to] of ring.spans) expect(Math.abs(Math.cos((from + to) / 2))).toBeCloseTo(0);
});

test("a line gets a second outline, a cage one along its cells", () => {
  expect(ringFigures({ figures: [line], cells: places("r1c1 r1c2 r1c3") }).map(({ shape }) => shape)).toEqual([
    "rim",
    "rim",
  ]);
  const cage: Figure = { ...line, layer: "cage" };
  const [, ring] = ringFigures({ figures: [cage], cells: places("r1c1 r1c2") });
  expect(ring).toMatchObject({ shape: "paths", paths: [{ closed: true }] });
});

test("ornaments of a line do not make its second outline uneven: it clears the widest of them all along", () => {
  const chevron: Figure = {
    ...line,
    paths: [
      {
        points: [
          [1, 0.4],
          [1.1, 0.5],
          [1, 0.6],
        ],
      },
    ],
    pen: { paint: "clue-ink", width: 0.04 },
  };
  const [rim] = ringFigures({ figures: [line, chevron], cells: places("r1c1 r1c2 r1c3") });
  if (rim?.shape !== "rim") throw new Error("a rim expected");
  expect(rim.round).toHaveLength(1);
  expect(rim.round[0]!.pen!.width).toBeCloseTo(2 * (0.1 + 0.02));
});

test("what is not on the board has no ring", () => {
  expect(ringFigures({ figures: [], cells: [] })).toEqual([]);
});
