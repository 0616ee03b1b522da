import { describe, expect, test } from "vitest";
import { instanceOn } from "../../../test-kit/instance.ts";
import type { Point, Shape } from "../../marks/shape.ts";
import type { Bound, Named } from "../contract.ts";
import { kindNamed } from "../registry.ts";

const grid = {
  id: "one",
  called: "the grid",
  size: 9,
  row: 1,
  column: 1,
  digits: [1, 2, 3, 4, 5, 6, 7, 8, 9],
  regions: [..."aaabbbccc".repeat(3), ..."dddeeefff".repeat(3), ..."ggghhhiii".repeat(3)],
};

const drawn = (name: string, value: unknown): readonly Shape[] => {
  const kind = kindNamed(name)!;
  return kind.marks(instanceOn(kind, value, [grid]) as Bound & Named);
};
const pointsOf = (shape: Shape): readonly Point[] => (shape.shape === "line" ? shape.points : [shape.at]);

const paths = ["r5c2 r4c2 r3c3 r2c4 r2c5", "r1c1 r2c2 r2c1 r1c2 r1c3", "r2c2-r2c4", "r4c4 r3c4 r3c3 r4c3"];
const plain = [
  "thermometer",
  "slow-thermometer",
  "double-arrow",
  "palindrome",
  "renban",
  "whisper",
  "between-line",
  "lockout-line",
  "region-sum-line",
  "modular-line",
  "entropic-line",
  "parity-line",
  "zipper-line",
  "nabner",
  "progression",
];

describe.each(plain)("%s", (name) => {
  test.each(paths)("along %s is drawn under the digits, near its cells", (path) => {
    const shapes = drawn(name, path);
    expect(new Set(shapes.map(({ layer }) => layer))).toEqual(new Set(["line"]));
    for (const [x, y] of shapes.flatMap(pointsOf)) {
      expect(Math.min(x, y)).toBeGreaterThan(0);
      expect(Math.max(x, y)).toBeLessThan(5);
    }
  });

  test("reaches from its first cell to its last", () => {
    const points = drawn(name, paths[0]).flatMap(pointsOf);
    for (const [ex, ey] of [
      [1.5, 4.5],
      [4.5, 1.5],
    ] as const)
      expect(Math.min(...points.map(([x, y]) => Math.hypot(x - ex, y - ey)))).toBeLessThan(0.39);
  });
});

test("lines of one cell are drawn too", () => {
  for (const [name, value] of [
    ["sum-line", { cells: "r2c2", sum: 3 }],
    ["region-sum-line", "r2c2"],
    ["nabner", "r2c2"],
  ] as const)
    for (const shape of drawn(name, value)) expect(pointsOf(shape).length).toBeGreaterThan(0);
});

test("a region sum line is crossed twice where it leaves a box, and nowhere else", () => {
  const strokes = (path: string): number => drawn("region-sum-line", path).length - 1;
  expect(strokes("r1c1-r1c3")).toBe(0);
  expect(strokes("r1c2-r1c8")).toBe(4);
  expect(strokes("r3c3 r4c4")).toBe(2);
});

test("chevrons of a palindrome point to its middle from both sides", () => {
  const tips = drawn("palindrome", "r1c1-r1c5")
    .slice(1)
    .map((shape) => pointsOf(shape));
  const ways = tips.map(([wing, tip]) => Math.sign(tip![0] - wing![0]));
  expect(ways).toEqual([1, 1, -1, -1]);
});

test("the number of a sum line stands in the corner of its first cell", () => {
  const text = drawn("sum-line", { cells: "r3c4-r3c7", sum: 12 }).find(({ shape }) => shape === "text");
  expect(text).toMatchObject({ text: "12", layer: "cage", anchor: "start", plate: true });
  const [[x, y]] = [pointsOf(text!)[0]!];
  expect([x - 3, y - 2].map((part) => part > 0 && part < 0.5)).toEqual([true, true]);
});

test("the shaft of an arrow leaves from the nearest cell of its pill", () => {
  const shaft = drawn("arrow", { total: "r1c1 r1c2", along: "r2c3 r3c3" })[1]!;
  const [x, y] = pointsOf(shaft)[0]!;
  expect(Math.hypot(x - 1.5, y - 0.5)).toBeCloseTo(0.38);
});

/** How far softening reaches from a corner into the two sides that meet there. */
const armsAt = (points: readonly Point[], k: number, round: number): number[] =>
  [points.at(k - 1)!, points[(k + 1) % points.length]!].map(([x, y]) =>
    Math.min(round, Math.hypot(x - points[k]![0], y - points[k]![1]) / 2),
  );

test.each(["r3c1 r3c2", "r2c1 r3c2", "r3c1 r3c2 r2c2"])("the sides of a pill round %s stay straight", (total) => {
  const along = `${total.endsWith("r2c2") ? "r2c3" : "r3c3"} r2c4-r2c9 r1c9-r1c1`;
  const [pill] = drawn("arrow", { total, along });
  if (pill?.shape !== "line") throw new Error("not an outline");
  const isBend = (k: number): boolean => {
    const [[ax, ay], [bx, by], [cx, cy]] = [-1, 0, 1].map(
      (step) => pill.points.at((k + step) % pill.points.length)!,
    ) as [Point, Point, Point];
    return Math.abs((bx - ax) * (cy - by) - (by - ay) * (cx - bx)) > 1e-9;
  };
  for (const k of pill.points.keys()) {
    const [before, after] = armsAt(pill.points, k, pill.round!);
    if (isBend(k)) expect(before).toBeCloseTo(after!);
  }
});
