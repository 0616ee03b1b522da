import { expect, test } from "vitest";
import { small } from "../../test-kit/grounds.ts";
import { fitting } from "./fitting.ts";

test("what has no place in the corrected puzzle is left out, the rest stays", () => {
  const before = {
    settled: { r1c1: 2, r1c2: 3, r2c2: 9, r9c9: 1 },
    marks: { r3c3: [1, 2, 7], r4c4: [8], r1c1: [2] },
    spots: [
      { digit: 4, house: "main/row/2", cells: ["r2c3", "r2c4"] },
      { digit: 2, house: "main/row/1", cells: ["r1c1", "r1c3", "r2c1"] },
      { digit: 2, house: "gone/row/1", cells: ["r1c3"] },
    ],
  };
  expect(fitting(small, before)).toEqual({
    settled: { r1c2: 3 },
    marks: { r3c3: [1, 2] },
    spots: [
      { digit: 4, house: "main/row/2", cells: ["r2c3", "r2c4"] },
      { digit: 2, house: "main/row/1", cells: ["r1c3"] },
    ],
  });
});
