import { describe, expect, test } from "vitest";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { fingerprint } from "./fingerprint.ts";
import { turned, turns } from "./turn.ts";
import { write } from "./write.ts";

const file = `puzzle: 1
title: Salt Stairs
setter: { name: Nobody, permission: own }
grids:
  - { id: north, size: 4 }
  - { id: south, size: 4, at: r3c3 }
givens: { cells: { r1c1: 3 } }
rules:
  - cage: { cells: r1c1 r1c2, sum: 4, tint: "#7a9e5b" }
  - thermometer: [r2c1 r3c1, r5c5-r5c3]
  - anti-knight
`;
const of = (text: string): string => fingerprint(puzzleOf(text));

describe("a fingerprint", () => {
  test("is sixteen hex digits", () => expect(of(file)).toMatch(/^[0-9a-f]{16}$/));
  test("is kept by writing and reading", () => expect(of(write(puzzleOf(file)))).toBe(of(file)));

  test.each([
    ["title", file.replace("Salt Stairs", "Salt")],
    ["setter", file.replace("Nobody", "Somebody")],
    ["colour", file.replace(', tint: "#7a9e5b"', "")],
    ["how a grid is called", file.replace("{ id: north,", "{ id: north, called: the top,")],
    ["order of kinds", file.replace(/( {2}- cage.*\n)( {2}- therm.*\n)/, "$2$1")],
    ["form of the givens", file.replace("{ cells: { r1c1: 3 } }", '{ north: "3..............." }')],
  ])("does not look at the %s", (_, other) => expect(of(other)).toBe(of(file)));

  test.each([
    ["given", file.replace("r1c1: 3", "r1c1: 1")],
    ["sum", file.replace("sum: 4", "sum: 5")],
    ["place", file.replace("r3c3", "r4c3").replace("r5c5-r5c3", "r5c6-r5c3")],
    ["order of a path", file.replace("r2c1 r3c1", "r3c1 r2c1")],
    ["order within a kind", file.replace("[r2c1 r3c1, r5c5-r5c3]", "[r5c5-r5c3, r2c1 r3c1]")],
    ["grid's id", file.replaceAll("north", "top")],
    ["number of rules", file.replace("  - anti-knight\n", "")],
  ])("tells another %s", (_, other) => expect(of(other)).not.toBe(of(file)));

  test("differs between all turns of a puzzle without symmetry", () =>
    expect(new Set(turns.map((turn) => fingerprint(turned(puzzleOf(file), turn)))).size).toBe(8));
});
