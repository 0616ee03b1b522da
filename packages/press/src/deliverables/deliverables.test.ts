import { createRequire } from "node:module";
import type { Plan } from "@solvewright/engine";
import { describe, expect, test } from "vitest";
import { planned } from "../../../engine/test-kit/planned.ts";
import { performed } from "../../../engine/test-kit/presenter.ts";
import { fourByFour } from "../../test-kit/four-by-four.ts";
import { packFiles } from "../files/registry.ts";
import { dataMark, titleMark } from "../page/page-of.ts";
import { readMeOf } from "./read-me.ts";
import type { Show } from "./show.ts";

/** The W3C's own parser and validator of WebVTT. */
const require = createRequire(import.meta.url);
const { WebVTTParser } = require("webvtt-parser");

const harm = `<script>alert(1)</script> [a](javascript:alert(1)) & *b*`;
const writtenBy = (title: string): string => `
setter: { name: ${JSON.stringify(title)}, permission: granted, link: "https://example.org/" }
wording: ${JSON.stringify(`${title}\n${title}`)}
notes: ${JSON.stringify(title)}
`;
const showOf = (title: string): Show => {
  const board = fourByFour({ title, more: writtenBy(title) });
  const { plan } = planned(board) as { readonly plan: Plan };
  const solution = Object.fromEntries(board.canvas.names.map((cell) => [cell, 1]));
  const words = title.split(" ").map((text, k) => ({ text, from: k, to: k + 1 }));
  const recorded = { take: performed(plan, board, 1).take, transcript: { words } };
  return { board, plan, solution, recorded };
};
const assets = { page: `<title>${titleMark}</title><script type="application/json">${dataMark}</script>` };

const [plain, hostile] = [showOf("Four by Four"), showOf(harm)];

describe.each(packFiles)("$name", ({ name, make, purpose }) => {
  test("the same show makes the same bytes", () => expect(make(plain, assets)).toEqual(make(plain, assets)));
  test("its purpose is a sentence", () => expect(purpose).toMatch(/^[A-Z].*\.$/));
  test("a hostile title is shown and harms nothing", () => {
    const content = make(hostile, assets);
    if (typeof content !== "string" || name.endsWith(".txt")) return;
    expect(content.replace('<script type="application/json">', "")).not.toMatch(/(?<!\\)<script/);
    if (name.endsWith(".md")) expect(content).not.toMatch(/(?<!\\)\]\(javascript/);
  });
});

test.each(packFiles.filter(({ name }) => name.endsWith(".vtt")))("$name is WebVTT by the W3C's validator", (file) => {
  for (const show of [plain, hostile]) {
    const what = file.name === "chapters.vtt" ? "chapters" : "captions/subtitles/descriptions";
    const { cues, errors } = new WebVTTParser().parse(file.make(show, assets), what);
    expect(errors).toEqual([]);
    expect(cues.length).toBeGreaterThan(0);
  }
});

test("the read-me names every file and what is still wanted", () => {
  const readMe = readMeOf(packFiles, plain);
  for (const { name } of packFiles) expect(readMe).toContain(name);
  expect(readMe).toContain("The date of the show.");
  expect(readMe).not.toContain("A link to");
});

describe("what is published of the rules", () => {
  const rule = "Neighbours on the path rhyme.";
  const board = fourByFour({
    more: `setter: { name: Ivo, permission: own }
notes: Odd and even mean nothing here.
rules:
  - kropke-white: r3c2 r3c3
  - own-rule: { says: ${JSON.stringify(rule)}, cells: r1c1 r1c2, drawn: line }
`,
  });
  const show: Show = { board, plan: planned(board).plan, solution: {} };
  const textOf = (name: string): string => packFiles.find((file) => file.name === name)!.make(show, assets) as string;
  test.each(["rules.txt", "description.txt"])("%s says what missing marks mean and what the setter adds", (name) => {
    expect(textOf(name)).toContain("Neighbours without a dot may be any digits.");
    expect(textOf(name)).toContain("Odd and even mean nothing here.");
  });
  test("what nothing checks is told to whoever makes the show, not to the audience", () => {
    expect(readMeOf(packFiles, show)).toContain(`Nothing here checks this rule`);
    expect(textOf("rules.txt")).toContain(rule);
    expect(textOf("rules.txt")).not.toContain("checks");
  });
  test("a description has no date in it and waits for none", () =>
    expect(packFiles.find(({ name }) => name === "description.txt")!.needs).not.toContain("date"));
  test("givens are told apart by more than the commas in their places", () =>
    expect(textOf("walkthrough.md")).toContain(
      "Given: 1 in row 1, column 1; 2 in row 1, column 2; 4 in row 1, column 4;",
    ));
  test("the walkthrough numbers the rules and goes on with the beats", () => {
    const numbers = [...textOf("walkthrough.md").matchAll(/^\*\*(\d+)\.\*\* /gm)].map(([, n]) => Number(n));
    expect(numbers).toEqual(numbers.map((_, k) => k + 1));
    expect(numbers.length).toBeGreaterThan(show.plan.rules.lines.length);
  });
});
