import { describe, expect, test } from "vitest";
import { canvasOf, placeOf } from "../../puzzle/canvas.ts";
import type { Grid } from "../../puzzle/puzzle.ts";
import { turningOf, turns } from "../../puzzle/turn.ts";
import type { BodyShape } from "../body.ts";
import type { Body } from "../contract.ts";
import { lineOf } from "../outside-line.ts";
import { areas } from "./areas.ts";
import { arrowBody } from "./arrow.ts";
import { cage, cellsProduct } from "./cage.ts";
import { cells, cellsDigits } from "./cells.ts";
import { cornerBlock, cornerDigits } from "./corner.ts";
import { diagonal } from "./diagonal.ts";
import { whole } from "./fields.ts";
import { outside } from "./outside.ts";
import { ownBody } from "./own.ts";
import { pairs, pairsBy } from "./pairs.ts";
import { pathSum, paths, pathsBy, pathsIn } from "./path.ts";
import { readPath, writePath } from "./path-text.ts";
import { wholeGrid, wholeGridWhich } from "./whole-grid.ts";

const grid = (id: string, size: number, at: string): Grid => ({
  id,
  called: `the ${id}`,
  size,
  ...placeOf(at)!,
  digits: Array.from({ length: size }, (_, k) => k + 1),
});
const grids = [grid("north", 6, "r1c1"), grid("south", 4, "r5c5")];
const canvas = canvasOf(grids);
const sum = outside({ numbers: { sum: whole() }, from: true });

const shapes: readonly (readonly [BodyShape<Body>, readonly unknown[]])[] = [
  [paths({ least: 2 }), ["r1c1 r1c2", "r1c1-r1c4 r2c5", { cells: "r1c1 r2c2", tint: "#7a9e5b" }]],
  [pathsBy({ least: 2, leastBy: 2 }), ["r1c1 r1c2", { cells: "r1c1 r1c2", by: 3 }]],
  [pathsIn({ least: 2 }), ["r1c1 r1c2", { cells: "r5c5 r6c6", grid: "south" }]],
  [
    pathSum({ least: 1 }),
    [
      { cells: "r1c1", sum: 0 },
      { cells: "r1c1-r3c1", sum: 12, note: "twelve" },
    ],
  ],
  [pairs, ["r1c1 r1c2", { cells: "r2c1 r1c1", note: "upward" }]],
  [pairsBy(2), ["r1c1 r1c2", { cells: "r1c1 r1c2", by: 2 }]],
  [cells, ["r1c1", "r1c1 r6c6 r3c2", { cells: "r1c1", note: "alone" }]],
  [
    cellsDigits,
    [
      { cells: "r1c1", digits: 5 },
      { cells: "r1c1 r4c4", digits: "1 12 3" },
    ],
  ],
  [cage, [{ cells: "r1c1 r1c2" }, { cells: "r1c1 r6c6", sum: 7 }]],
  [cellsProduct, [{ cells: "r1c1-r1c6", product: 9_007_199_254_740_991 }]],
  [areas, [{ areas: ["r1c1-r1c3", "r2c1-r2c3"] }]],
  [
    arrowBody,
    [
      { total: "r1c1", along: "r1c2" },
      { total: "r1c1 r1c2", along: "r2c3-r4c3" },
    ],
  ],
  [cornerDigits, [{ at: "r1c1", digits: "2 2" }]],
  [cornerBlock, [{ at: "r2c2", size: 3 }]],
  [diagonal, [{ cells: "r1c2-r5c6", sum: 9 }]],
  [
    sum,
    [
      { grid: "north", row: 2, from: "left", sum: 3 },
      { column: 5, from: "bottom", sum: 3 },
    ],
  ],
  [wholeGrid, [null, { grids: ["north", "south"] }]],
  [wholeGridWhich, [null, { which: "up" }, { grids: ["south"], which: "both" }]],
  [ownBody, ["Odd cells lie.", { says: "x", cells: "r1c1 r1c2", drawn: "line", allows: ["1 2", "2 1"] }]],
];

describe.each(shapes.map(([shape, values]) => ({ name: shape.name, shape, values })))("$name", ({ shape, values }) => {
  const bodies = values.map((value) => {
    const [read] = shape.read(value, canvas);
    expect(read, JSON.stringify(value)).toMatchObject({ at: [], faults: [], body: expect.anything() });
    return read!.body!;
  });

  test("writes each body in the form that it was read from", () => expect(bodies.map(shape.write)).toEqual(values));

  test("reads several as a list", () => {
    const read = shape.read(shape.name === "areas" ? [...values, ...values] : values, canvas);
    expect(read.map(({ at }) => at)).toEqual(read.map((_, k) => [k]));
    expect(read.every(({ body, faults }) => body && faults.length === 0)).toBe(true);
  });

  test("four quarters leave it as it was", () => {
    const right = turns.find(({ name }) => name === "a quarter to the right")!;
    for (const body of bodies) {
      // The sheet is 8 x 8, but north and south change places as it turns.
      let [turned, now] = [body, grids];
      for (let k = 0; k < 4; k++) {
        const turning = turningOf(right, now);
        turned = shape.turn(turned, turning);
        now = now.map((grid) => {
          const corners = [
            turning.place(grid),
            turning.place({ row: grid.row + grid.size - 1, column: grid.column + grid.size - 1 }),
          ];
          return {
            ...grid,
            row: Math.min(...corners.map(({ row }) => row)),
            column: Math.min(...corners.map(({ column }) => column)),
          };
        });
      }
      const { grid: _, ...others } = turned as { grid?: string };
      const { grid: __, ...before } = body as { grid?: string };
      expect(others).toEqual(before);
    }
  });

  test("takes no unknown key, and no colour in words", () => {
    const keyed = bodies.map(shape.write).find((value) => typeof value === "object" && value !== null) ?? {};
    const faultsOf = (more: object) => shape.read({ ...keyed, ...more }, canvas).flatMap(({ faults }) => faults);
    expect(faultsOf({ hue: 3 })).toMatchObject([{ at: ["hue"], atKey: true, read: "hue" }]);
    expect(faultsOf({ tint: "green" })).toMatchObject([{ at: ["tint"], read: "green" }]);
  });
});

describe("areas", () => {
  const read = (value: unknown) => areas.read(value, canvas);
  test("are one instance in a list of lists", () => {
    expect(read([["r1c1 r1c2", "r2c1 r2c2"]])).toHaveLength(1);
    expect(
      read([
        ["r1c1", "r2c1"],
        ["r3c1", "r4c1", "r5c1"],
      ]).map(({ body }) => body?.areas.length),
    ).toEqual([2, 3]);
  });
  test.each([[["r1c1", "r2c1"]], ["r1c1 r2c1"], [[["r1c1"]]], [{ areas: ["r1c1"] }]])("are not %j", (value) =>
    expect(read(value).flatMap(({ faults }) => faults)).toHaveLength(1),
  );
});

describe("an outside line", () => {
  const line = (body: object) => lineOf(body, { canvas, grids });
  const names = (body: object): string[] => {
    const found = line(body);
    if ("faults" in found) throw new Error("no line");
    return found.cells.map((cell) => canvas.names[cell]!);
  };
  test("is seen from its side", () => {
    expect(names({ grid: "south", row: 2, from: "right" })).toEqual(["r6c8", "r6c7", "r6c6", "r6c5"]);
    expect(names({ grid: "south", column: 1, from: "top" })).toEqual(["r5c5", "r6c5", "r7c5", "r8c5"]);
    expect(names({ column: 6 })).toEqual(["r1c6", "r2c6", "r3c6", "r4c6", "r5c6", "r6c6"]);
  });
  test("has its clue .45 outside the edge, in the middle of the line", () => {
    expect(line({ grid: "south", row: 2, from: "right" })).toMatchObject({ outsideAt: [8.45, 5.5], along: [-1, 0] });
    const top = line({ grid: "north", column: 3, from: "top" });
    expect(top).toMatchObject({ outsideAt: [2.5, expect.closeTo(-0.45)], along: [0, 1] });
  });
  test.each([
    [{ row: 5 }, undefined],
    [{ row: 2 }, /the grid as well/],
    [{ row: 7 }, /1 to 6/],
    [{ grid: "south", row: 5 }, /the south, 1 to 4/],
    [{ grid: "west", row: 1 }, /north, south/],
  ])("%j", (body, right) => {
    const found = line(body);
    if (right === undefined) expect(found).toMatchObject({ house: "north/row/5" });
    else expect(found).toMatchObject({ faults: [{ right: expect.stringMatching(right) }] });
  });
  test.each([
    [{ row: 1, sum: 3 }, "from as well"],
    [{ row: 1, from: "top", sum: 3 }, "left or right"],
    [{ column: 1, from: "left", sum: 3 }, "top or bottom"],
    [{ row: 1, column: 1, from: "left", sum: 3 }, "not both"],
    [{ from: "left", sum: 3 }, "a row or a column"],
  ])("%j is told", (value, right) =>
    expect(sum.read(value, canvas)[0]!.faults).toMatchObject([{ right: expect.stringContaining(right) }]),
  );
  test("takes a side only where the kind has one", () => {
    const sideless = outside({ numbers: {}, from: false });
    expect(sideless.read({ row: 1, from: "left" }, canvas)[0]!.faults).toHaveLength(1);
    expect(outside({ numbers: {}, from: "optional" }).read({ row: 1, from: "left" }, canvas)[0]!.faults).toEqual([]);
  });
});

describe("remarks", () => {
  const remarksOn = (shape: BodyShape<Body>, value: unknown): number =>
    shape.remarks?.(shape.read(value, canvas)[0]!.body!, { canvas, grids }).length ?? 0;
  test.each([
    ["r1c1 r1c2", "r2c2", 0],
    ["r1c1 r2c1", "r3c1", 0],
    ["r1c1 r2c2", "r3c1", 0],
    ["r1c2 r1c1", "r2c2", 1],
    ["r2c1 r1c1", "r3c1", 1],
    ["r1c2 r2c1", "r3c1", 1],
  ])("on a total of %s, its shaft to %s: %i", (total, along, count) =>
    expect(remarksOn(arrowBody, { total, along })).toBe(count),
  );
  test.each([
    ["r1c1-r6c6", 0],
    ["r1c2-r5c6", 0],
    ["r5c1-r1c5", 0],
    ["r5c5-r8c8", 0],
    ["r2c2-r6c6", 1],
    ["r1c1-r5c5", 1],
    ["r1c1-r8c8", 0],
    ["r1c1-r7c7", 1],
  ])("on the diagonal %s: %i", (run, count) => expect(remarksOn(diagonal, { cells: run, sum: 9 })).toBe(count));
});

describe("a path's text", () => {
  test.each([
    "r1c1",
    "r1c1 r1c2",
    "r1c1-r1c3",
    "r3c3-r1c1 r1c2",
    "r1c1-r1c6 r2c6-r4c6",
    "r1c1 r3c3 r5c5",
    "r6c6-r3c3 r3c4",
  ])("%s comes back as it is", (text) => expect(writePath(readPath(text, canvas).places)).toBe(text));
  test("runs count both ends and may be of one cell", () => {
    expect(readPath("r1c1-r1c5", canvas).places).toHaveLength(5);
    expect(readPath("r2c2-r2c2", canvas).places).toHaveLength(1);
  });
  test.each([
    ["r1c1  r9c1", [{ read: "r9c1", offset: 6, right: "a cell of the canvas, r1c1 to r8c8" }]],
    ["r1c8", [{ read: "r1c8", offset: 0, right: "a cell that lies in a grid" }]],
    ["r4c1-r8c5", [{ right: "a run that stays in the grids" }]],
    ["r1c1-r2c3", [{ right: "a run along a row, a column or a diagonal" }]],
    ["r1c1 r2c1 r1c1-r1c3", [{ offset: 10, right: "each cell once; r1c1 comes twice" }]],
    ["r01c1", [{ read: "r01c1" }]],
    ["R1C1", [{ right: expect.stringContaining("a cell such as r1c1") }]],
    ["r1c1,r1c2", [{ read: "r1c1,r1c2" }]],
  ])("%s is told", (text, faults) => expect(readPath(text, canvas).faults).toMatchObject(faults));
});
