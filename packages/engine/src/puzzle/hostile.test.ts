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

/** Forty grids of other digits each, which overlap: hardly two cells that can hold the same. */
const overlapping = Array.from({ length: 40 }, (_, k) => {
  const digits = Array.from({ length: 32 }, (_, digit) => digit).filter((digit) => (digit * 11 + k * 5) % 32 >= 7);
  const [down, right] = [9 * Math.floor(k / 8), 9 * (k % 8)];
  return `  - { id: m${k}, size: 25, regions: none, at: r${down + 1}c${right + 1}, digits: ${digits.join(" ")} }\n`;
}).join("");
const many = `puzzle: 1\ntitle: T\ngrids:\n${overlapping}rules:\n`;
const large = `puzzle: 1\ntitle: T\ngrids:\n${sheets.join("")}rules:\n`;
const one = `${head("size: 25, regions: none")}rules:\n`;

/** As many pieces as a file may have, each made anew. */
const filledBy = (head: string, piece: (k: number) => string): string => {
  let text = head;
  for (let k = 0; text.length + piece(k).length <= mostBytes; k++) text += piece(k);
  return text;
};
const across = (k: number): string => `r${1 + (k % 60)}c${1 + ((7 * k) % 60)}-r${1 + (k % 60)}c${13 + ((7 * k) % 60)}`;
const canvas = Array.from({ length: 100 }, (_, k) =>
  k % 2 ? `r${k + 1}c100-r${k + 1}c1` : `r${k + 1}c1-r${k + 1}c100`,
);
const longest = Array.from({ length: 25 }, (_, k) => (k % 2 ? `r${k + 1}c25-r${k + 1}c1` : `r${k + 1}c1-r${k + 1}c25`));
/** Almost the largest number that is still exact. */
const product = 9_007_199_254_740_000;

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
      "cages of many sorts of cells",
      filledBy(many, (k) => `  - cage: { cells: ${across(k)}, sum: ${150 + (k % 9)} }\n`),
      "",
    ],
    [
      "big products",
      filledBy(one, (k) => `  - product-cage: { cells: r1c1-r1c13, product: ${product + k} }\n`),
      "multiplied",
    ],
    [
      "products of many sorts of cells",
      filledBy(many, (k) => `  - product-cage: { cells: ${across(k)}, product: 6746328388800 }\n`),
      "",
    ],
    ["circles of many sorts of cells", filledBy(many, (k) => `  - counting-circles: ${across(k)}\n`), ""],
    ["nabner lines of many sorts of cells", filledBy(many, (k) => `  - nabner: ${across(k)}\n`), ""],
    [
      "long sandwiches",
      filledBy(one, (k) => `  - sandwich: { row: ${1 + (k % 25)}, sum: ${k % 400} }\n`),
      "a sum that digits between the 1 and the 25 of row",
    ],
    [
      "long x-sums",
      filledBy(many, (k) => `  - x-sum: { grid: m${k % 40}, row: ${1 + (k % 25)}, from: left, sum: ${k % 400} }\n`),
      "",
    ],
    ["arrows with long pills", filledBy(one, () => "  - arrow: { total: r1c1-r1c3, along: r2c3-r2c16 }\n"), ""],
    ["long sum lines", filled(one, `  - sum-line: { cells: ${longest.join(" ")}, sum: 7919 }\n`), "more than 20000"],
    [
      "areas to add up",
      filled(one, `  - sum-area: { cells: ${longest.join(" ")}, sum: 999983 }\n`),
      "rules that name fewer",
    ],
    ["long between lines", filled(one, `  - between-line: ${longest.join(" ")}\n`), "rules that name fewer"],
    [
      "many index lines",
      filled(`${head("size: 25")}rules:\n  - index-line: [`, "{row: 1},", "]\n"),
      "fewer such rules",
    ],
    ["a path of the whole canvas", filled(large, `  - even: ${canvas.join(" ")}\n`), "625 cells at most"],
    [
      "a list of paths, repeated",
      `${filled(`${one}  - renban: &a [`, "r1c1 r1c2,", `]\n${"  - renban: *a\n".repeat(16)}`)}`,
      "written out",
    ],
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
    expect(text.length).toBeGreaterThan(mostBytes - 1500);
    expect(problems.length).toBeLessThanOrEqual(100);
    if (right !== "") expect(problems.map((problem) => `${problem.read} ${problem.right}`).join("\n")).toContain(right);
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
