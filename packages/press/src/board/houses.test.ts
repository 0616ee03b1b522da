import { placeOf } from "@solvewright/engine";
import { expect, test } from "vitest";
import { houseFigures } from "./houses.ts";

const places = (names: string) => names.split(" ").map((name) => placeOf(name)!);
const bracketPaths = (names: string) => {
  const bracket = houseFigures(places(names), new Set())
    .filter(({ layer }) => layer === "bracket")
    .at(-1);
  return bracket?.shape === "paths" ? bracket.paths.map(({ points }) => points) : [];
};

test("a row has a bracket at its left and right end, outside its cells", () => {
  const brackets = bracketPaths("r2c1 r2c2 r2c3");
  expect(brackets).toHaveLength(2);
  const xs = brackets.map((points) =>
    [...new Set(points.map(([x]) => Math.round(x * 100) / 100))].sort((a, b) => a - b),
  );
  expect(xs.sort((a, b) => a[0]! - b[0]!)).toEqual([
    [-0.09, 0.26],
    [2.74, 3.09],
  ]);
});

test("a column has them above and below", () => {
  const ys = bracketPaths("r1c2 r2c2 r3c2")
    .flat()
    .map(([, y]) => Math.round(y * 100) / 100);
  expect([Math.min(...ys), Math.max(...ys)]).toEqual([-0.09, 3.09]);
  expect(ys.every((y) => y <= 0.26 || y >= 2.74)).toBe(true);
});

test("a region that is no rectangle is held at the ends of its own outline", () => {
  const ends = bracketPaths("r1c1 r1c2 r1c3 r2c3 r2c4").flat();
  expect(ends.every(([x]) => x <= 0.27 || x >= 3.73)).toBe(true);
  expect(ends.filter(([x]) => x > 3).every(([, y]) => y > 0.8)).toBe(true);
});

test("a cell with a sign of its own bears no band", () => {
  const [band] = houseFigures(places("r1c1 r1c2"), new Set(["r1c1"]));
  expect(band).toMatchObject({
    layer: "band",
    paths: [
      {
        points: [
          [1, 0],
          [2, 0],
          [2, 1],
          [1, 1],
        ],
      },
    ],
  });
  expect(houseFigures(places("r1c1"), new Set(["r1c1"])).some(({ layer }) => layer === "band")).toBe(false);
});
