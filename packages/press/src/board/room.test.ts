import { compile, placeOf } from "@solvewright/engine";
import { puzzleOf } from "@solvewright/engine/test-kit";
import { describe, expect, test } from "vitest";
import { roomIn } from "./room.ts";
import { cluesOf } from "./subject.ts";

const clues = cluesOf(
  compile(
    puzzleOf(`
puzzle: 1
title: Room
setter: { name: Nobody, permission: own }
grids:
  - { id: g, size: 4 }
rules:
  - cage: { cells: r1c1 r1c2, sum: 5 }
  - palindrome: r2c1 r3c2 r4c3
  - renban: r2c3 r2c4
  - arrow: { total: r3c4, along: r3c3 }
  - parity-line: r4c1 r3c1
`),
  ),
);
const room = (name: string) => roomIn(placeOf(name)!, clues);

describe("the room for a digit", () => {
  test("a sum in the corner pushes the digit of its own cell alone", () => {
    expect(room("r1c1").taken).toBeGreaterThan(0);
    expect(room("r1c2").taken).toBe(0);
  });

  test.each(["r2c1", "r3c2", "r4c3", "r3c3"])("a dark line runs under the digit of %s", (name) => {
    expect(room(name).crossed).toBe(true);
  });

  test.each(["r2c2", "r2c3", "r3c4", "r1c1"])("none runs under the digit of %s", (name) => {
    expect(room(name).crossed).toBe(false);
  });

  test.each(["r4c1", "r3c1"])("the circle or square in %s is wide enough to be seen round its digit", (name) => {
    expect(room(name).crossed).toBe(false);
  });
});
