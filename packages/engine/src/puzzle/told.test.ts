import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import type { Problem } from "./puzzle.ts";
import { read } from "./read.ts";

/** A file with these parts in place of the sound ones. */
const file = (parts: Record<string, string | undefined> = {}): string =>
  Object.entries({ puzzle: "1", title: "T", setter: "{ name: N }", grids: "\n  - { id: main, size: 4 }", ...parts })
    .map(([key, value]) => (value === undefined ? "" : `${key}: ${value}\n`))
    .join("");
const rules = (...list: string[]): string => file({ rules: list.map((rule) => `\n  - ${rule}`).join("") });
const grid = (keys: string): string => file({ grids: `\n  - { id: main, ${keys} }` });
const map = (...rows: string[]): string =>
  file({ grids: `\n  - id: main\n    size: 4\n    regions: |${rows.map((row) => `\n      ${row}`).join("")}` });
const picture = (...rows: string[]): string =>
  file({ givens: `\n  main: |${rows.map((row) => `\n    ${row}`).join("")}` });

const faults: Readonly<Record<string, string>> = {
  "a text": "hello",
  "a list": "- a\n- b",
  "no version": "title: T\ngrids: [{ id: main, size: 4 }]",
  "another version": file({ puzzle: "2" }),
  "an unknown key": file({ rulez: "[]" }),
  "no grids": file({ grids: undefined }),
  "a grid that is a word": file({ grids: "[main]" }),
  "a grid without id": file({ grids: "\n  - size: 4" }),
  "ids that won't do": file({ grids: "\n  - { id: North, size: 4 }\n  - { id: cells, size: 4 }" }),
  "a grid without size": file({ grids: "\n  - id: main" }),
  "a size in words": grid("size: four"),
  "a huge size": grid("size: 100000"),
  "a size without boxes": grid("size: 7"),
  "boxes of the wrong size": grid("size: 4, regions: boxes 2x4"),
  "regions in words": grid("size: 4, regions: squares"),
  "a place off any canvas": grid("size: 4, at: r99c1"),
  "a place in words": grid("size: 4, at: top"),
  "digits with commas": grid('size: 4, digits: "1, 2, 3, 4"'),
  "a digit twice": grid("size: 4, digits: 1 2 3 3"),
  "digits past 31": grid("size: 4, digits: 29-32"),
  "a map with a digit": map("aabb", "aab1", "ccdd", "ccdd"),
  "a map with a long row": map("aabb", "aabbb", "ccdd", "ccdd"),
  "a map with a comment": map("aabb # top", "aabb", "ccdd", "ccdd"),
  "grids without a common digit": file({
    grids: "\n  - { id: north, size: 4 }\n  - { id: south, size: 4, at: r3c3, digits: 5-8 }",
  }),
  "a setter in words": file({ setter: "Jane" }),
  "a misspelt key": file({ setter: "{ nam: Jane }" }),
  "permissions by use": file({ setter: "{ name: N, permission: { show: granted, radio: asked, print: maybe } }" }),
  "a link that runs": file({ setter: '{ name: N, link: "javascript:alert(1)" }' }),
  "givens of no grid": file({ givens: "\n  north: |\n    1..." }),
  "a picture with a long row": picture("1. ..", ". . . . 2", "....", "...."),
  "a picture with a short row": picture("1...", "...", "....", "...."),
  "a picture with too few rows": picture("1...", "....", "...."),
  "a picture with strange cells": picture("1..7", ".x..", "....", "...."),
  "a line that is too short": file({ givens: "\n  main: 1..2" }),
  "single givens": file({ givens: "{ cells: { r5c1: 1, r1: 2, r1c1: x, r1c2: 9 } }" }),
  "a given twice with two digits": file({ givens: '\n  main: "1..............."\n  cells: { r1c1: 2 }' }),
  "a given that one grid does not have": file({
    grids: "\n  - { id: north, size: 4 }\n  - { id: south, size: 6, at: r3c3 }",
    givens: '\n  south: "5..................................."',
  }),
  "givens that clash": file({ givens: "{ cells: { r1c1: 1, r2c2: 1, r3c2: 1 } }" }),
  "rules as keys": file({ rules: "{ cage: { cells: r1c1 } }" }),
  "two kinds in an entry": rules("cage: { cells: r1c1 }\n    sum: 3"),
  "an empty entry": rules(""),
  "unknown kinds": rules("kropke-blue: r1c1 r1c2", "Thermometer: r1c1 r1c2", "__proto__: 1", "constructor"),
  "no body": rules("thermometer", "thermometer:", "thermometer: 3"),
  "a key of a body": rules("cage: { cels: r1c1 r1c2, sum: 3 }", "cage: { cells: r1c1 r1c2, sum: many }"),
  "cells in a path": rules("thermometer: r1c1 r1c2x r1c9 r0c1 r1c1-r2c4"),
  "a path over two lines": rules("thermometer: r1c1 r1c2\n      r1c3 r9c9 r1c4"),
  "paths in a list": rules("thermometer: [r1c1 r1c2, r1c1 r3c3, r1c1]"),
  "a path in quotes": rules('thermometer: "r1c1 r9c2"'),
  "a colour": rules("cage: { cells: r1c1 r1c2, tint: green }"),
  "a colour without quotes": rules("cage: { cells: r1c1 r1c2, tint: #7a9e5b }"),
  pairs: rules("xv-v: r1c1 r2c2", "xv-v: r1c1 r1c2 r1c3", "kropke-black: { cells: r1c1 r1c2, by: 1 }"),
  arrows: rules(
    "arrow: { total: r1c1, along: r3c3 }",
    "arrow: { total: r1c1-r1c4, along: r2c1 }",
    "arrow: { total: r1c1, along: r1c2 r1c1 }",
  ),
  areas: rules("clone: [r1c1 r1c2, r3c1 r3c2]", "clone: [[r1c1]]", "same-sum: { areas: r1c1 r1c2 }"),
  "outside clues": rules(
    "sandwich: { sum: 3 }",
    "sandwich: { row: 5, sum: 3 }",
    "sandwich: { row: 1, column: 1, sum: 2 }",
    "sandwich: { grid: x, row: 1, sum: 2 }",
    "x-sum: { row: 1, sum: 3 }",
    "x-sum: { row: 1, from: top, sum: 3 }",
    "x-sum: { row: 1, from: north, sum: 3 }",
  ),
  "a line of two grids": file({
    grids: "\n  - { id: north, size: 4 }\n  - { id: south, size: 6, at: r3c3 }",
    rules: "\n  - sandwich: { row: 2, sum: 2 }\n  - sandwich: { row: 5, sum: 2 }",
  }),
  corners: rules(
    "quadruple: { at: r4c4, digits: 1 2 }",
    "quadruple: { at: r1c1, digits: 1 2 3 4 1 }",
    "quadruple: { at: r1c1, digits: 1 x }",
  ),
  diagonals: rules("little-killer: { cells: r1c1 r1c2, sum: 3 }", "little-killer: { cells: r1c1 r2c2 r3c1, sum: 3 }"),
  "whole grids": rules(
    "anti-knight: { grids: [x] }",
    "anti-knight: { grids: main }",
    "anti-knight: r1c1",
    "diagonals: { which: left }",
  ),
  "own rules": rules(
    "own-rule: { says: x, allows: [[1]] }",
    "own-rule: { says: x, cells: r1c1 r1c2, allows: [[1, 2], [1]] }",
    "own-rule: { cells: r1c1 }",
    "own-rule: { says: x, drawn: circle }",
  ),
  "rules that nothing meets": rules(
    "thermometer: r1c1-r4c1 r4c2",
    "xv-x: r1c1 r1c2",
    "cage: { cells: r1c1-r4c1 r4c2 }",
    "product-cage: { cells: r1c1 r1c2, product: 11 }",
  ),
  "control characters": file({ title: '"a\\u0007b"', notes: "a\u0007b" }),
  "a lost character": file({ title: "a\ufffdb" }),
  "a colon in a title": file({ title: "Salt: Sand" }),
  "an open quote": file({ title: '"Salt' }),
  "an open list": file({ rules: "[cage" }),
  "a tag": file({ title: "!salt x" }),
  "two files in one": `${file()}---\n${file()}`,
  "a name for nothing": file({ notes: "*x" }),
  "a bomb": `puzzle: 1\na: &a [x, x]\nb: &b [*a, *a]\ngrids: [*b, *b]\n`,
  "lists in lists": `grids: ${"[".repeat(100)}${"]".repeat(100)}`,
  "too large": "#".repeat(70_000),
  "only a comment": "# nothing yet\n",
  "a key that is a list": `${file()}? [a]\n: 1\n`,
  "no space after the colon": "puzzle:1\ntitle: T\n",
};

const quoted = (text: string, line: number): string => {
  const read = (text.split("\n")[line - 1] ?? "").trim().replace(/[^ -~]/gu, "~");
  return read.length > 90 ? `${read.slice(0, 90)}...` : read;
};
const section = (name: string, text: string, problems: readonly Problem[]): string =>
  [
    `== ${name}`,
    ...(problems.length === 0 ? ["nothing is wrong"] : []),
    ...problems.flatMap(({ line, column, read, right, path }) => [
      `${line}:${column}  ${quoted(text, line)}`,
      ...(path === "" ? [] : [`    ${path}`]),
      `    read ${read}`,
      `    right ${right}`,
    ]),
    "",
  ].join("\n");

const folder = fileURLToPath(new URL("./bad/", import.meta.url));
const files = readdirSync(folder).filter((name) => name.endsWith(".yaml"));

describe("what is told of faulty files", () => {
  test("of the malformed cases, as bad/told.txt has it", async () => {
    const sections = files.map((name) => {
      const text = readFileSync(folder + name, "utf8");
      return section(name, text, read(text).problems);
    });
    await expect(sections.join("\n")).toMatchFileSnapshot("bad/told.txt");
  });

  test("of one fault after the other, as bad/told-of-each.txt has it", async () => {
    const sections = Object.entries(faults).map(([name, text]) => section(name, text, read(text).problems));
    await expect(sections.join("\n")).toMatchFileSnapshot("bad/told-of-each.txt");
  });

  test.each(Object.entries(faults))("%s: is told in few words, with nothing of the machinery", (_, text) => {
    const { problems } = read(text);
    expect(problems.length).toBeGreaterThan(0);
    for (const { line, column, read, right } of problems) {
      expect(line).toBeLessThanOrEqual(text.split("\n").length);
      expect(column).toBeLessThanOrEqual((text.split("\n")[line - 1] ?? "").length + 1);
      expect(read.length, read).toBeLessThanOrEqual(90);
      expect(right.length, right).toBeLessThanOrEqual(160);
      expect(`${read} ${right}`).not.toMatch(/undefined|null\b|NaN|\[object|invalid|error|oops|[a-z]!/i);
    }
  });
});
