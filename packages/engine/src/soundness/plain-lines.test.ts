import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { finished } from "../finished.ts";
import { lineJudge, type PlainLine, readPlainLine } from "./plain-lines.ts";

const lineOf = (text: string): PlainLine => {
  const line = readPlainLine(text);
  if ("read" in line) throw new Error(`${line.read}, right would be ${line.right}`);
  return line;
};

// P. Norvig, pytudes, "hardest" (MIT): givens and solution, checks/SOURCES.md.
const hardest = readFileSync(fileURLToPath(new URL("../../../../checks/norvig-hardest.txt", import.meta.url)), "utf8")
  .split("\n")
  .filter((line) => /^[\d.]{81} /.test(line))
  .map((line) => line.split(" ") as [string, string]);

describe("published grids, one after another on one judge", () => {
  const judge = lineJudge(9);
  test("there are eleven", () => expect(hardest).toHaveLength(11));
  test.each([...hardest, ...hardest])("%s", (givens, solution) => {
    const { verdict, solutions } = finished(judge(lineOf(givens)));
    expect(verdict).toBe("one");
    expect(solutions[0]!.join("")).toBe(solution);
  });
});

test("a clash, a hopeless grid or one with several leaves nothing behind for the next line", () => {
  const judge = lineJudge(9);
  const [givens, solution] = hardest[0]!;
  const several = `${givens.slice(0, 80).replace(/[1-9]/, ".")}.`;
  const clash = `11${".".repeat(79)}`;
  // Only a 9 is left for the first cell, and its column has one.
  const hopeless = `.123456789${".".repeat(71)}`;
  for (const [line, verdict] of [
    [clash, "none"],
    [hopeless, "none"],
    [several, "several"],
    [".".repeat(81), "several"],
    [clash, "none"],
  ] as const) {
    expect(finished(judge(lineOf(line))).verdict, line).toBe(verdict);
    expect(finished(judge(lineOf(givens))).solutions.map((each) => each.join(""))).toEqual([solution]);
  }
});

test.each([
  ["1234341221434321", "one"],
  ["12343412........", "several"],
  ["0000000000000000", "several"],
  ["12.......", "several"],
  ["12.23....", "one"],
  ["1", "one"],
  [".", "one"],
])("%s of another size: %s", (text, verdict) => {
  const line = lineOf(text);
  expect(finished(lineJudge(line.size)(line)).verdict).toBe(verdict);
});

describe("lines that are none", () => {
  test.each([
    ["", "0 characters"],
    ["1".repeat(80), "80 characters"],
    [".".repeat(256), "256 characters"],
  ])("%s has no such length", (text, read) => expect(readPlainLine(text)).toMatchObject({ read }));
  test("a character that is no digit of the size, with its place", () => {
    expect(readPlainLine(`1.x${".".repeat(78)}`)).toMatchObject({ at: [2], read: "x" });
    expect(readPlainLine("12345...........")).toMatchObject({
      at: [4],
      read: "5",
      right: expect.stringContaining("1 to 4"),
    });
    expect(readPlainLine(" 1..............")).toMatchObject({ at: [0], read: " " });
  });
});
