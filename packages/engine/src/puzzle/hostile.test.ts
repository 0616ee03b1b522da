import { describe, expect, test } from "vitest";
import { read } from "./read.ts";
import { mostBytes } from "./source.ts";

/** As many pieces as a file may have. */
const filled = (head: string, piece: string, tail = ""): string =>
  head + piece.repeat(Math.floor((mostBytes - head.length - tail.length) / piece.length)) + tail;
const head = (keys: string): string => `puzzle: 1\ntitle: T\ngrids:\n  - { id: main, ${keys} }\n`;
const sheets = [0, 1, 2, 3].flatMap((down) =>
  [0, 1, 2, 3].map((right) => `  - { id: g${down}${right}, size: 25, at: r${25 * down + 1}c${25 * right + 1} }\n`),
);

/** Each of these once took far too long, or would have ended the process. */
describe("files made to be slow are read in the time of any other (the suite's limit is a minute)", () => {
  test.each([
    ["brackets", "[".repeat(mostBytes), "nested less deeply"],
    ["dashes", "- ".repeat(mostBytes / 2), "nested less deeply"],
    ["keys in keys", filled("", "? "), "nested less deeply"],
    ["many repetitions", filled("a: &a 1\nb: [", "*a,", "]"), "written out"],
    ["long repetitions", `${filled("a: &a [", "[1,[2]],", `]\nb: [${"*a,".repeat(12)}]\n`)}`, "one of the keys"],
    ["a long picture", filled(`${head("size: 25")}givens:\n  main: |\n`, "    9999\n"), "25 rows"],
    ["a wide picture", filled(`${head("size: 25")}givens:\n  main: |\n    `, "x "), "25 rows"],
    [
      "a map of digits",
      filled("puzzle: 1\ngrids:\n  - id: main\n    size: 25\n    regions: |\n", "      1\n"),
      "a letter",
    ],
    ["many digits", filled("puzzle: 1\ngrids:\n  - id: main\n    size: 25\n    digits: ", "77 "), "0 to 31"],
    ["a path of words", filled(`${head("size: 9")}rules:\n  - renban: `, "q "), "a cell such as"],
    ["a path off the canvas", filled(`${head("size: 9")}rules:\n  - renban: `, "r99c99 "), "r9c9"],
    [
      "many whole-grid rules",
      filled(`puzzle: 1\ngrids:\n${sheets.join("")}rules:\n`, "  - all-dots-shown\n"),
      "50 at most",
    ],
    ["many unknown kinds", filled(`${head("size: 9")}rules:\n`, "  - kropke-blaak: r1c1\n"), "kropke-black"],
    ["many unknown keys", filled("puzzle: 1\n", "aaa: 1\n"), "each key once"],
    ["many grids", filled("puzzle: 1\ngrids:\n", "  - { id: main, size: 25, at: r76c76 }\n"), "40 grids at most"],
    ["control characters", filled("title: ", "\u0001"), "control characters"],
    ["many magic squares", filled(`${head("size: 8")}rules:\n`, "  - magic-square: { at: r1c1, size: 3 }\n"), ""],
    [
      "digits at a long post",
      filled(
        `${head("size: 25")}rules:\n`,
        `  - outside-digits: { row: 1, from: left, digits: ${Array.from({ length: 14 }, (_, k) => k + 13).join(" ")}, within: 25 }\n`,
      ),
      "",
    ],
  ])("%s", (_, text, right) => {
    const { problems } = read(text.slice(0, mostBytes));
    expect(problems.length).toBeLessThanOrEqual(100);
    if (right !== "") expect(problems.map((problem) => problem.right).join("\n")).toContain(right);
  });
});

test("what is too large is not parsed at all", () =>
  expect(read("[".repeat(10_000_000)).problems).toMatchObject([{ line: 1, column: 1, right: "64 KiB at most" }]));

test("64 KiB are counted in bytes", () => {
  const file = (notes: string): string => `${head("size: 4")}notes: ${notes}\n`;
  const room = mostBytes - file("").length;
  expect(read(file(`${"x ".repeat(9000)}`)).problems).toEqual([]);
  expect(read(`${head("size: 4")}${"#".repeat(room)}`).problems).toEqual([]);
  expect(read(`${head("size: 4")}#${"ł".repeat(room / 2 + 8)}`).problems).toMatchObject([{ right: "64 KiB at most" }]);
});

test("a key that would reach into prototypes is a key like any other", () => {
  const { draft, problems } = read(
    `${head("size: 4")}__proto__: { polluted: true }\nrules: [cage: { cells: r1c1, __proto__: { sum: 3 } }]\n`,
  );
  expect(problems.map(({ read: text }) => text)).toEqual(["__proto__", "__proto__"]);
  expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  expect("polluted" in draft).toBe(false);
});
