import { expect, test } from "vitest";
import { digitsOf } from "../board/digits.ts";
import type { Scope } from "../rules/contract.ts";
import { obeysScope } from "./obeys.ts";

const cells = [0, 1, 2];
const rising: Scope = {
  cells,
  start: 0,
  next: (last, digit) => (digit > Number(last) ? digit : undefined),
  ok: (last) => last !== 4,
};

// The guard behind every counterexample: a fault of the search must not pass it.
test.each<[string, Scope, number[], boolean]>([
  ["different", { cells, different: true }, [1, 2, 4], true],
  ["a digit twice", { cells, different: true }, [1, 2, 1], false],
  ["each digit once", { cells, different: true, digits: digitsOf([1, 2, 3]) }, [3, 1, 2], true],
  ["a digit missing", { cells, different: true, digits: digitsOf([1, 2, 3]) }, [4, 1, 2], false],
  ["what holds", { cells: [0, 2], holds: ([x, y]) => x! < y! }, [1, 9, 2], true],
  ["what doesn't hold", { cells: [2, 0], holds: ([x, y]) => x! < y! }, [1, 9, 2], false],
  ["read to a good end", rising, [1, 2, 3], true],
  ["read to a bad end", rising, [1, 2, 4], false],
  ["a dead end", rising, [2, 1, 3], false],
])("%s", (_, scope, digits, fine) => {
  const domains = cells.map(() => digitsOf([1, 2, 3, 4]));
  expect(obeysScope(scope, Int8Array.from(digits), domains)).toBe(fine);
});
