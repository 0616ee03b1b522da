import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { planned } from "../../test-kit/planned.ts";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { samples } from "../../test-kit/samples.ts";
import { compile } from "../board/compile.ts";
import { techniques } from "../deduce/registry.ts";
import { phrases } from "./english/lines/registry.ts";
import { textOf, wordsIn } from "./line.ts";

/** Said of steps that no technique of the ladder finds: what-ifs, their ends, and answers to "why not?". */
const besides = ["visible-block", "contradiction", "what-if", "long-what-if"];

test("every technique has its words, and no words are for nothing", () =>
  expect(Object.keys(phrases).sort()).toEqual([...techniques.map(({ name }) => name), ...besides].sort()));

const root = fileURLToPath(new URL("../../../../", import.meta.url));
const fileOf = (path: string) => ({
  name: path.split("/").at(-1)!.replace(".puzzle.yaml", ""),
  text: readFileSync(`${root}${path}`, "utf8"),
});
const examples = readdirSync(`${root}examples`)
  .filter((name) => name.endsWith(".puzzle.yaml"))
  .map((name) => fileOf(`examples/${name}`));
/** Puzzles of others, for lines that ours do not need: what-ifs, locked digits, big cages, inequalities. */
const published = ["csplib-057-killer", "futoshiki-a", "gecode-05", "glpk-sudoku-dat"].map((name) =>
  fileOf(`checks/published/${name}.puzzle.yaml`),
);

const plans = [...examples, ...samples, ...published].map(({ name, text }) => {
  const board = compile(puzzleOf(text));
  return { name, grids: board.puzzle.grids, plan: planned(board).plan };
});

const sentencesOf = (text: string): string[] => text.split(/(?<=[.?:])\s+(?=[A-Z0-9])/);

const expectWellMade = (text: string): void => {
  expect(text).toMatch(/^[A-Z0-9].*[.?]$/s);
  expect(text).not.toMatch(/undefined|\[object|NaN| {2}|\s[,.;:]|,,|\.\.|[:,;]\.|: ,|r\d+c\d+/);
  // A sentence begins with a capital; so does what follows one. The same word twice is a slip.
  expect(text).not.toMatch(/[.?] [a-z]/);
  expect(text).not.toMatch(/\b([a-z]+) \1\b/);
};

describe.each(plans)("$name", ({ plan, grids }) => {
  const beats = plan.acts.flatMap((act) => act.beats);
  test.each(beats)("$n: $say", ({ say, placed, parts, steps }) => {
    expect(textOf(parts)).toBe(say);
    expectWellMade(say);
    expectWellMade(placed);
    expect(say).not.toMatch(/\b(row|column) \d/);
    for (const sentence of sentencesOf(say)) expect(wordsIn(sentence), sentence).toBeLessThanOrEqual(20);
    if (steps.length > 1) expect(wordsIn(say)).toBeLessThanOrEqual(40);
    if (steps.length > 1) expect(say.match(/[.?!](\s|$)/g)!.length).toBeLessThanOrEqual(3);
    if (grids.length > 1) expect(grids.some(({ called }) => placed.includes(called))).toBe(true);
  });
  test("each step and sub-step by itself is well made, and says a digit that it gives", () => {
    for (const step of plan.steps)
      for (const { say, places } of [step, ...(step.steps ?? [])]) {
        expectWellMade(say);
        for (const digit of Object.values(places)) expect(say).toMatch(new RegExp(`\\b${digit}\\b`));
      }
  });
  test("the parts that follow are told apart from the reasons", () => {
    for (const { parts } of beats) expect(parts.some(({ role }) => role === "so")).toBe(true);
  });
  test("acts open and close in a line each", () => {
    for (const { open, close } of plan.acts) {
      expectWellMade(open);
      expectWellMade(close);
      for (const sentence of [...sentencesOf(open), ...sentencesOf(close)])
        expect(wordsIn(sentence), sentence).toBeLessThanOrEqual(20);
    }
  });
});

/** What is said of our own examples, to be read aloud by whoever changes a phrase; changed only on purpose. */
describe("scripts", () => {
  const told = plans.filter(({ name }) =>
    ["paper-mill", "market-stall", "rain-gauge", "harbour-lights"].includes(name),
  );
  test.each(told)("$name reads as it did", async ({ name, plan }) => {
    const acts = plan.acts.map(({ title, open, close, beats }) =>
      [`${title}. ${open}`, ...beats.map(({ n, say }) => `${n}. ${say}`), close].join("\n"),
    );
    await expect(`${acts.join("\n\n")}\n`).toMatchFileSnapshot(`./scripts/${name}.txt`);
  });
});
