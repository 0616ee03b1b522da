import { expect, test } from "vitest";
import { areaLabel, dashedBorder } from "./border.ts";
import { distance } from "./points.ts";

const corner = [
  { row: 1, column: 1 },
  { row: 1, column: 2 },
  { row: 2, column: 2 },
];
const look = { places: corner, ink: "ink", pushed: false } as const;

test("every side of a border begins and ends with a whole dash", () => {
  const sides = dashedBorder(look);
  expect(sides).toHaveLength(6);
  for (const side of sides) {
    if (side.shape !== "line") throw new Error("a side is a line");
    const [dash, gap] = side.stroke!.dash!;
    const gaps = (distance(side.points[0]!, side.points[1]!) - dash!) / (dash! + gap!);
    expect(gaps).toBeCloseTo(Math.round(gaps), 9);
    expect(dash).toBe(0.09);
    expect(gap).toBeGreaterThan(0.04);
    expect(gap).toBeLessThan(0.08);
  }
});

test("the label stands in the first cell and gives way to a mark on its left", () => {
  expect(areaLabel(look, "13")).toMatchObject({ at: [0.07, 0.3], text: "13", plate: true });
  expect(areaLabel({ ...look, pushed: true }, "13")).toMatchObject({ at: [0.25, 0.3] });
});
