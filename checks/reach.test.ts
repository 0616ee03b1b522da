import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { compile } from "../packages/engine/src/board/compile.ts";
import { finished } from "../packages/engine/src/finished.ts";
import { measuring } from "../packages/engine/src/reach/measures.ts";
import { puzzleOf } from "../packages/engine/test-kit/puzzles.ts";

const fileOf = (name: string): string => fileURLToPath(new URL(name, import.meta.url));
const published = (name: string) => compile(puzzleOf(readFileSync(fileOf(`./published/${name}.puzzle.yaml`), "utf8")));

const linesIn = (name: string): string[] =>
  readFileSync(fileOf(name), "utf8")
    .split("\n")
    .filter((line) => line !== "" && !line.startsWith("#"));
const line = (text: string) => {
  const rows = text.slice(0, 81).match(/.{9}/g)!;
  const givens = rows.map((row) => `    ${row}`).join("\n");
  return compile(
    puzzleOf(
      `puzzle: 1\ntitle: A line\nsetter: { name: Nobody, permission: own }\ngrids: [{ id: main, size: 9 }]\ngivens:\n  main: |\n${givens}\n`,
    ),
  );
};
const euler = (number: number) => line(linesIn("../../shared/checks/euler-96.txt")[number - 1]!);
const hasEuler = existsSync(fileOf("../../shared/checks/euler-96.txt"));
const hardest = (number: number) => line(linesIn("./norvig-hardest.txt")[number - 1]!);

// shared/checks/PUBLISHED.md, "How hard people find it": 30 seeded runs each, counted for this project by a program of
// its own. Both are means of 30 runs, so they may lie three standard errors of a difference apart, and half a last place.
const far = (error: number, lastPlace: number): number => 3 * Math.SQRT2 * error + lastPlace / 2;

describe.each([
  ["GLPK sudoku.mod", () => published("glpk-sudoku-mod"), 16, 17.99, 0],
  ["SWI-Prolog problem 1", () => published("swi-clpfd-manual-1"), 5, 4.11, 0],
  ["hardest 03", () => hardest(3), 4, 1.41, 78.5],
  ...(hasEuler
    ? ([
        ["Euler 01", () => euler(1), 15, 16.34, 0],
        ["Euler 16", () => euler(16), 35, 28.71, 0],
        ["Euler 06", () => euler(6), 8, 4.04, 3],
        ["Euler 42", () => euler(42), 6, 3.95, 8],
        ["Euler 49", () => euler(49), 3, 2.21, 6.9],
        ["Euler 50", () => euler(50), 9, 5.2, 12.7],
      ] as const)
    : []),
] as const)("%s", (_, boardOf, first, dependency, refutation) => {
  test(`has ${first} first options, dependency ${dependency} and refutation ${refutation}`, () => {
    const found = finished(measuring(boardOf()));
    expect({ first: found.first, whole: found.whole, runs: found.runs }).toEqual({ first, whole: true, runs: 30 });
    expect(Math.abs(found.dependency - dependency)).toBeLessThanOrEqual(far(found.dependencyError, 0.01));
    expect(Math.abs(found.refutation - refutation)).toBeLessThanOrEqual(far(found.refutationError, 0.1));
    // A wide spread would let anything pass.
    expect(found.dependencyError / found.dependency).toBeLessThan(0.1);
    if (refutation > 0) expect(found.refutationError / found.refutation).toBeLessThan(0.1);
  });
});
