import { describe, expect, test } from "vitest";
import { instanceOn } from "../../../test-kit/instance.ts";
import { rowsObeying, upTo } from "../../../test-kit/rows.ts";
import type { Bound, Kind, Named, Scope } from "../contract.ts";
import { arrow } from "./arrow.ts";
import { parityLine } from "./parity-line.ts";
import { renban } from "./renban.ts";
import { slowThermometer } from "./slow-thermometer.ts";
import { thermometer } from "./thermometer.ts";
import { whisper } from "./whisper.ts";

/** The first cells of row 1 as a path. */
const inRow = (length: number): string =>
  upTo(length)
    .map((column) => `r1c${column}`)
    .join(" ");

/** The rows of digits that fill a line of so many cells in row 1 of a grid; with `apart`, of different digits. */
const rowsOn = (kind: Kind, value: unknown, size: number, { apart = false } = {}): (readonly number[])[] => {
  const instance = instanceOn(kind, value, size) as Bound & Named;
  const row: Scope[] = apart ? [{ cells: instance.cells, different: true }] : [];
  return [...rowsObeying(instance.cells, [...row, ...kind.scopes(instance)], upTo(size))];
};
const countOn = (kind: Kind, value: unknown): number => rowsOn(kind, value, 9).length;

/** Source of every table where none is named: checks/PUBLISHED, counted for this project by two independent methods. */
describe("digits 1 to 9 on lines of k cells", () => {
  const two = upTo(9).slice(1);
  test("thermometers: 9 over k", () => {
    expect(two.map((k) => countOn(thermometer, inRow(k)))).toEqual([36, 84, 126, 126, 84, 36, 9, 1]);
  });
  test("thermometers that may stay level: 8 + k over k", () => {
    expect(two.map((k) => countOn(slowThermometer, inRow(k)))).toEqual([45, 165, 495, 1287, 3003, 6435, 12870, 24310]);
  });
  test("orders of a renban: (10 - k) times k!", () => {
    expect(two.map((k) => countOn(renban, inRow(k)))).toEqual([16, 42, 144, 600, 2880, 15120, 80640, 362880]);
  });
  test("whispers of at least 5, which never hold a 5", () => {
    const rows = two.map((k) => rowsOn(whisper, inRow(k), 9));
    expect(rows.map(({ length }) => length)).toEqual([20, 60, 170, 492, 1414, 4074, 11728, 33772]);
    expect(rows.flat(2)).not.toContain(5);
  });
  test("whispers of at least 4", () => {
    const counts = two.map((k) => countOn(whisper, { cells: inRow(k), by: 4 }));
    expect(counts).toEqual([30, 112, 400, 1454, 5248, 18996, 68680, 248428]);
  });
  test("shafts of an arrow with one circle, and those of different digits", () => {
    const shafts = [2, 3, 4].map((k) =>
      rowsOn(arrow, { total: "r2c1", along: inRow(k) }, 9).map(([, ...along]) => along),
    );
    expect(shafts.map(({ length }) => length)).toEqual([36, 84, 126]);
    const different = shafts.map((list) => list.filter((along) => new Set(along).size === along.length).length);
    expect(different).toEqual([32, 42, 0]);
  });
});

describe("whole rows", () => {
  test("of 1 to 9, odd and even in turn: 5! times 4!", () => {
    expect(rowsOn(parityLine, inRow(9), 9, { apart: true })).toHaveLength(2880);
  });
  test("of 1 to 9 as a whisper: 72 of at least 4, none of at least 5", () => {
    expect(rowsOn(whisper, { cells: inRow(9), by: 4 }, 9, { apart: true })).toHaveLength(72);
    expect(rowsOn(whisper, inRow(9), 9, { apart: true })).toHaveLength(0);
  });
  test("without neighbours that differ by 1 (OEIS A002464, n = 4 to 9)", () => {
    const counts = [4, 5, 6, 7, 8, 9].map(
      (n) => rowsOn(whisper, { cells: inRow(n), by: 2 }, n, { apart: true }).length,
    );
    expect(counts).toEqual([2, 14, 90, 646, 5242, 47622]);
  });
  test("with neighbours that differ by at least 3 (OEIS A127697, n = 6 to 9)", () => {
    const counts = [6, 7, 8, 9].map((n) => rowsOn(whisper, { cells: inRow(n), by: 3 }, n, { apart: true }).length);
    expect(counts).toEqual([2, 32, 368, 3984]);
  });
});

test("cell i of a thermometer of k cells on 1 to n lies from i to n - k + i (checks/PUBLISHED)", () => {
  for (const [n, k] of [
    [9, 3],
    [9, 8],
    [6, 4],
    [8, 7],
  ] as const) {
    const rows = rowsOn(thermometer, inRow(k), n);
    const held = upTo(k).map((i) => [...new Set(rows.map((row) => row[i - 1]!))].sort((a, b) => a - b));
    expect(held).toEqual(upTo(k).map((i) => upTo(n - k + 1).map((step) => i - 1 + step)));
  }
});

test.each([6, 8, 9])(
  "a thermometer of n - 1 or n - 2 cells on 1 to %i leaves two or three digits a cell (common practice)",
  (n) => {
    for (const [k, left] of [
      [n - 1, 2],
      [n - 2, 3],
    ] as const) {
      const rows = rowsOn(thermometer, inRow(k), n);
      expect(upTo(k).map((i) => new Set(rows.map((row) => row[i - 1])).size)).toEqual(upTo(k).map(() => left));
    }
  },
);
