import { expect, test } from "vitest";
import { instanceOn, obeysScope } from "../../../test-kit/instance.ts";
import type { Table } from "../../terms/term.ts";
import { magicSquare } from "./magic-square.ts";

const orders = (digits: readonly number[]): number[][] =>
  digits.length === 0
    ? [[]]
    : digits.flatMap((digit) => orders(digits.filter((other) => other !== digit)).map((rest) => [digit, ...rest]));

const corner = [0, 1, 2, 9, 10, 11, 18, 19, 20];

// Common practice: there are eight normal magic squares of three, turns and mirror images of one.
test("eight magic squares of the digits 1 to 9, by the definition and by the table", () => {
  const instance = instanceOn(magicSquare, { at: "r1c1", size: 3 }, 9);
  const scopes = magicSquare.scopes(instance).toReversed();
  const found = orders([1, 2, 3, 4, 5, 6, 7, 8, 9]).filter((square) =>
    scopes.every((scope) => obeysScope(scope, (cell) => square[corner.indexOf(cell)]!)),
  );
  expect(found).toHaveLength(8);
  expect(found.every((square) => square[4] === 5)).toBe(true);
  const table = magicSquare.terms(instance).find((term): term is Table => term.term === "table")!;
  const sorted = (rows: readonly (readonly number[])[]) => rows.map((row) => row.join()).sort();
  expect(sorted(table.rows)).toEqual(sorted(found));
});
