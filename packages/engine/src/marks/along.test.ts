import { describe, expect, test } from "vitest";
import { across, along, atPoint, evenly } from "./along.ts";
import { sideOf } from "./parallel.ts";
import { distance } from "./points.ts";
import type { Point } from "./shape.ts";

const bent: readonly Point[] = [
  [0.5, 2.5],
  [0.5, 1.5],
  [1.5, 0.5],
  [2.5, 0.5],
];
const diagonal = Math.SQRT2;

const isNear = ([ax, ay]: Point, [bx, by]: Point): void => {
  expect(ax).toBeCloseTo(bx, 9);
  expect(ay).toBeCloseTo(by, 9);
};

describe("places on a line", () => {
  test("are found by how far they are along it", () => {
    isNear(along(bent, 0).at, [0.5, 2.5]);
    isNear(along(bent, 0.25).at, [0.5, 2.25]);
    isNear(along(bent, 1 + diagonal / 2).at, [1, 1]);
    isNear(along(bent, 2 + diagonal).at, [2.5, 0.5]);
  });

  test("run straight between bends and halfway between both ways at one", () => {
    expect(along(bent, 0.5).angle).toBeCloseTo(-Math.PI / 2);
    expect(along(bent, 1).angle).toBeCloseTo((-3 * Math.PI) / 8);
    expect(atPoint(bent, 3).angle).toBeCloseTo(0);
  });

  test("spread evenly, both ends among them", () => {
    const places = evenly(bent, 0.25);
    isNear(places[0]!.at, bent[0]!);
    isNear(places.at(-1)!.at, bent[3]!);
    expect(places).toHaveLength(1 + Math.round((2 + diagonal) / 0.25));
  });

  test("a stroke across has its middle on the line", () => {
    const [from, to] = across(along(bent, 0.5), 0.4);
    isNear(from, [0.3, 2]);
    isNear(to, [0.7, 2]);
  });
});

test("the side of a line keeps its distance at the ends and along every step", () => {
  const side = sideOf(bent, 0.1);
  expect(distance(side[0]!, bent[0]!)).toBeCloseTo(0.1);
  expect(distance(side[3]!, bent[3]!)).toBeCloseTo(0.1);
  for (const [k, from] of bent.slice(0, -1).entries()) {
    const to = bent[k + 1]!;
    for (const point of [side[k]!, side[k + 1]!]) {
      const aside =
        ((to[0] - from[0]) * (point[1] - from[1]) - (to[1] - from[1]) * (point[0] - from[0])) / distance(from, to);
      expect(aside).toBeCloseTo(0.1);
    }
  }
});
