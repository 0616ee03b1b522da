import { describe, expect, test } from "vitest";
import { mill, small } from "../../test-kit/grounds.ts";
import { cleared, marked, settled, spotted } from "./entry.ts";
import { nothing, type Position } from "./position.ts";

const at = (part: Partial<Position>): Position => ({ ...nothing, ...part });

describe("typing a digit", () => {
  test("writes a mark, in one cell or several, in order", () => {
    const one = marked(small, nothing, ["r1c2", "r2c2"], 3);
    expect(marked(small, one, ["r2c2"], 2).marks).toEqual({ r1c2: [3], r2c2: [2, 3] });
  });

  test("takes it out where all chosen cells have it, else completes it", () => {
    const position = at({ marks: { r1c2: [3], r2c2: [2, 3], r2c3: [2] } });
    expect(marked(small, position, ["r1c2", "r2c2"], 3).marks).toEqual({ r2c2: [2], r2c3: [2] });
    expect(marked(small, position, ["r1c2", "r2c3"], 3).marks).toEqual({ r1c2: [3], r2c2: [2, 3], r2c3: [2, 3] });
  });

  test("never settles a cell, whether a mark comes or goes", () => {
    const position = at({ marks: { r2c2: [2, 3] } });
    expect(marked(small, position, ["r2c2"], 3).settled).toEqual({});
  });

  test("leaves givens, settled cells among open ones and what the grids do not have alone", () => {
    const position = at({ settled: { r2c2: 4 } });
    expect(marked(small, position, ["r1c1", "r2c2", "r2c3"], 3)).toEqual(
      at({ settled: { r2c2: 4 }, marks: { r2c3: [3] } }),
    );
    expect(marked(mill, nothing, ["r4c6", "r4c1"], 8).marks).toEqual({ r4c1: [8] });
  });

  test("in a settled cell takes its digit out, or begins anew with another as a mark", () => {
    const position = at({ settled: { r2c2: 4 } });
    expect(marked(small, position, ["r2c2"], 4)).toEqual(nothing);
    expect(marked(small, position, ["r2c2"], 3)).toEqual(at({ marks: { r2c2: [3] } }));
  });
});

describe("Enter", () => {
  test("settles each chosen cell that holds exactly one mark; the others stay", () => {
    const position = at({ marks: { r2c2: [3], r3c3: [1, 3], r4c4: [2] } });
    expect(settled(small, position, ["r2c2", "r3c3"], false)).toEqual(
      at({ settled: { r2c2: 3 }, marks: { r3c3: [1, 3], r4c4: [2] } }),
    );
  });

  test("clears what the digit strikes where that is wished", () => {
    const position = at({
      marks: { r2c2: [3], r2c4: [3, 4], r4c2: [3], r4c4: [3] },
      spots: [
        { digit: 3, house: "main/row/2", cells: ["r2c2", "r2c3"] },
        { digit: 3, house: "main/row/3", cells: ["r3c2", "r3c3"] },
        { digit: 4, house: "main/row/2", cells: ["r2c2", "r2c3"] },
      ],
    });
    expect(settled(small, position, ["r2c2"], true)).toEqual({
      settled: { r2c2: 3 },
      marks: { r2c4: [4], r4c4: [3] },
      spots: [
        { digit: 3, house: "main/row/3", cells: ["r3c3"] },
        { digit: 4, house: "main/row/2", cells: ["r2c3"] },
      ],
    });
  });

  test("sight reaches through both grids of a shared cell", () => {
    const position = at({ marks: { r4c6: [3], r4c1: [3, 4], r1c6: [3, 4], r4c11: [3], r11c1: [3] } });
    expect(settled(mill, position, ["r4c6"], true).marks).toEqual({ r4c1: [4], r1c6: [4], r11c1: [3] });
  });
});

describe("a spot mark", () => {
  test("goes into the topmost grid's row first, then into the other's", () => {
    const top = spotted(mill, nothing, ["r4c6", "r4c7"], 4, "row", 0);
    expect(top.spots).toEqual([{ digit: 4, house: "yard/row/4", cells: ["r4c6", "r4c7"] }]);
    expect(spotted(mill, nothing, ["r4c6"], 4, "row", 1).spots).toEqual([
      { digit: 4, house: "mill/row/1", cells: ["r4c6"] },
    ]);
  });

  test("is kept for each house of the chosen cells, and taken out when typed again", () => {
    const both = spotted(small, nothing, ["r2c2", "r3c2"], 4, "row", 0);
    expect(both.spots.map(({ house }) => house)).toEqual(["main/row/2", "main/row/3"]);
    expect(spotted(small, both, ["r2c2", "r3c2"], 4, "row", 0)).toEqual(nothing);
  });

  test("grows by the cells that lack it", () => {
    const one = spotted(small, nothing, ["r2c4"], 4, "region", 0);
    expect(spotted(small, one, ["r1c3", "r2c4"], 4, "region", 0).spots[0]!.cells).toEqual(["r1c3", "r2c4"]);
  });
});

test("clearing takes out the largest first: digits, marks, spot marks", () => {
  const spots = [{ digit: 4, house: "main/row/2", cells: ["r2c2", "r2c3"] }];
  const full = at({ settled: { r2c2: 4 }, marks: { r2c3: [1] }, spots });
  const cells = ["r2c2", "r2c3"];
  const first = cleared(small, full, cells);
  const second = cleared(small, first, cells);
  expect(first).toEqual(at({ marks: { r2c3: [1] }, spots }));
  expect(second).toEqual(at({ spots }));
  expect(cleared(small, second, cells)).toEqual(nothing);
});
