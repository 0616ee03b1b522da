import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { accept } from "./accept.ts";
import { read } from "./read.ts";
import { turned, turns } from "./turn.ts";
import { write } from "./write.ts";

const ferries = `puzzle: 1
title: Two Ferries
setter: { name: Example Setter, permission: own }
grids:
  - id: north
    size: 4
  - id: south
    size: 6
    at: r3c3
    regions: |
      aaabbb
      aaabbb
      cccddd
      cccddd
      eeefff
      eeefff
givens:
  south: |
    . . . . . .
    . 1 . . . .
    . . . . . 4
    . . . . . .
    . . . . . .
    . . . . . .
  cells: { r1c1: 3, r2c1: 1, r4c1: 2 }
rules:
  - palindrome: r4c2 r4c3 r5c4
  - xv-v: [r2c1 r2c2]
  - cage: [{ cells: r3c6 r3c7 r4c7, sum: 12 }, { cells: r5c5-r6c5, sum: 3 }]
`;

describe("a good file", () => {
  const puzzle = puzzleOf(ferries);
  test("is read whole", () => {
    expect(puzzle.rules.map(({ id }) => id)).toEqual(["palindrome/1", "xv-v/1", "cage/1", "cage/2"]);
    expect(puzzle.canvas.names.length).toBe(16 + 36 - 4);
    expect([...puzzle.givens].map(([cell, digit]) => [puzzle.canvas.names[cell], digit])).toContainEqual(["r4c4", 1]);
  });
  test("with CRLF line ends is the same", () =>
    expect(puzzleOf(ferries.replace(/\n/g, "\r\n")).givens).toEqual(puzzle.givens));
  test("writes and reads back as itself", () => expect(puzzleOf(write(puzzle))).toEqual(puzzle));
  test.each(turns.map((turn, k) => ({ turn, k })))("turned ($k) writes and reads back", ({ turn }) => {
    const other = turned(puzzle, turn);
    expect(puzzleOf(write(other)).givens).toEqual(other.givens);
  });
});

describe("givens", () => {
  const nine = (givens: string): string =>
    `puzzle: 1\ntitle: T\ngrids: [{ id: main, size: 9 }]\ngivens:\n  ${givens}\n`;
  const line = "003020600900305001001806400008102900700000008006708200002609500800203009005010300";
  const given = (text: string): string => {
    const { givens, canvas } = puzzleOf(text);
    return canvas.names.map((_, cell) => givens.get(cell) ?? 0).join("");
  };
  // The first puzzle of checks' euler-96: an unquoted line of digits, zeros in front, far past what a number holds.
  test.each([
    ["a line of digits without quotes", `main: ${line}`],
    ["a line in quotes", `main: "${line.replaceAll("0", ".")}"`],
    ["a line over two lines", `main: ${line.slice(0, 36)}\n    ${line.slice(36)}`],
    [
      "a picture",
      `main: |\n${line
        .match(/.{9}/g)!
        .map((row) => `    ${[...row].join(" ").replaceAll("0", "_")}\n`)
        .join("")}`,
    ],
    ["a picture and the same cell again", `main: ${line}\n  cells: { r1c3: 3 }`],
  ])("as %s lose nothing", (_, text) => expect(given(nine(text))).toBe(line));

  test("0 is a digit where the grid has it", () => {
    const puzzle = puzzleOf(
      "puzzle: 1\ntitle: T\ngrids: [{ id: main, size: 4, digits: 0-3 }]\ngivens: { main: 0............... }\n",
    );
    expect([...puzzle.givens]).toEqual([[0, 0]]);
  });
});

const withLine = (line: number, text: string): string =>
  ferries
    .split("\n")
    .with(line - 1, text)
    .join("\n");
const problemsOf = (text: string) =>
  read(text).problems.map(({ line, column, read, right }) => ({ line, column, read, right }));

describe("a faulty file", () => {
  test("tells the place of a bad cell inside a path", () =>
    expect(problemsOf(withLine(27, "  - palindrome: r4c2 r0c4 r5c4"))).toMatchObject([
      { line: 27, column: 22, read: "r0c4" },
    ]));
  test("names the nearest kind", () =>
    expect(problemsOf(withLine(28, "  - kropke-blak: [r2c1 r2c2]"))).toMatchObject([
      { line: 28, right: expect.stringContaining("kropke-black") },
    ]));
  test("tells all faults together", () => {
    const text = withLine(28, "  - xv-w: [r2c1 r2c2]").replace("size: 6", "size: 60");
    expect(problemsOf(text).length).toBeGreaterThan(1);
  });
  test.each([
    ["nothing", ""],
    ["binary", "\u0000\u0001\u0002\ufffd"],
    ["deep nesting", `puzzle: ${"[".repeat(5000)}`],
    ["a prototype key", `${ferries}__proto__: { polluted: true }\n`],
    ["too large", "x".repeat(10_000_000)],
    [
      "an alias bomb",
      `a: &a [x,x,x,x,x,x,x,x,x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a,*a]\nc: [*b,*b,*b,*b,*b,*b,*b,*b,*b]\n`,
    ],
    ["a huge grid", ferries.replace("size: 6", "size: 100000")],
  ])("%s is a problem, not a crash", (_, text) => {
    expect(read(text).problems.length).toBeGreaterThan(0);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});

const bad = fileURLToPath(new URL("../../../../../shared/cases/bad/", import.meta.url));

describe.skipIf(!existsSync(bad))("the malformed files", () => {
  const names = existsSync(bad) ? readdirSync(bad).filter((name) => name.endsWith(".why.txt")) : [];
  test.each(names.map((name) => ({ name, why: readFileSync(`${bad}${name}`, "utf8").trim() })))(
    "$name: $why",
    ({ name, why }) => {
      const reading = read(readFileSync(`${bad}${name.replace(".why.txt", ".puzzle.yaml")}`, "utf8"));
      const lines = [...why.matchAll(/lines? (\d+)|and (\d+) \(/g)].map(([, a, b]) => Number(a ?? b));
      if (why.startsWith("ACCEPT")) expect(accept(reading)).toBeDefined();
      else for (const line of lines) expect(reading.problems.map((problem) => problem.line)).toContain(line);
    },
  );
});
