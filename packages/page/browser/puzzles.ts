import { readFileSync } from "node:fs";
import { accept, compile, read } from "@solvewright/engine";
import { type PageData, pageDataOf, type ShowData } from "@solvewright/press";

export const dataOf = (text: string, show?: ShowData): PageData => pageDataOf(compile(accept(read(text))!), show);

/** Ours, small enough to be solved key by key; by hand its one solution is: */
export const kettle = `puzzle: 1
title: Kettle
setter: { name: Wren Oake, permission: own }
wording: |
  Rows, columns and boxes hold 1 to 4. The cage adds up, and the sign opens to the greater.
  A white dot joins neighbours in number, a black one a number and its double. A thermometer climbs from its bulb.
grids: [{ id: main, called: the grid, size: 4 }]
givens: { cells: { r4c4: 2 } }
rules:
  - cage: { cells: r1c1 r1c2, sum: 3 }
  - greater-than: [r1c1 r1c2]
  - thermometer: r3c1 r2c1 r2c2
  - kropke-white: [r3c3 r3c4]
  - kropke-black: [r1c3 r2c3]
`;
const kettleSolution = ["2143", "3421", "1234", "4312"];

/** The digit of a cell of the kettle, rows and columns from 1. */
export const kettleDigit = (row: number, column: number): number => Number(kettleSolution[row - 1]![column - 1]);

/** Every open cell of the kettle with its digit. */
export const kettleCells = kettleSolution
  .flatMap((digits, row) =>
    [...digits].map((digit, column) => ({ cell: `r${row + 1}c${column + 1}`, digit: Number(digit) })),
  )
  .filter(({ cell }) => cell !== "r4c4");

export const mill = readFileSync(new URL("../../../examples/paper-mill.puzzle.yaml", import.meta.url), "utf8");
