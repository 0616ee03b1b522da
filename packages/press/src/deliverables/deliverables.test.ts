import { createRequire } from "node:module";
import { compile, type Plan } from "@solvewright/engine";
import { puzzleOf } from "@solvewright/engine/test-kit";
import { describe, expect, test } from "vitest";
import { planned } from "../../../engine/test-kit/planned.ts";
import { performed } from "../../../engine/test-kit/presenter.ts";
import { packFiles } from "../files/registry.ts";
import { dataMark, titleMark } from "../page/page-of.ts";
import { readMeOf } from "./read-me.ts";
import type { Show } from "./show.ts";

/** The W3C's own parser and validator of WebVTT. */
const require = createRequire(import.meta.url);
const { WebVTTParser } = require("webvtt-parser");

const harm = `<script>alert(1)</script> [a](javascript:alert(1)) & *b*`;
const text = (title: string): string => `puzzle: 1
title: ${JSON.stringify(title)}
setter: { name: ${JSON.stringify(title)}, permission: granted, link: "https://example.org/" }
wording: ${JSON.stringify(`${title}\n${title}`)}
notes: ${JSON.stringify(title)}
grids: [{ id: main, called: the grid, size: 4 }]
givens:
  main: |
    12.4
    34..
    2...
    ..1.
`;
const showOf = (title: string): Show => {
  const board = compile(puzzleOf(text(title)));
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
