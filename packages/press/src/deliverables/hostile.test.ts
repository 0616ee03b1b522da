import { createRequire } from "node:module";
import type { Puzzle } from "@solvewright/engine";
import { describe, expect, test } from "vitest";
import { planned } from "../../../engine/test-kit/planned.ts";
import { performed } from "../../../engine/test-kit/presenter.ts";
import { fourByFour } from "../../test-kit/four-by-four.ts";
import { bookletPdf } from "../files/booklet.ts";
import { picturesAsked } from "../files/pictures.ts";
import { packFiles } from "../files/registry.ts";
import { dataMark, titleMark } from "../page/page-of.ts";
import { a4 } from "../paper/paper.ts";
import type { Recorded } from "../take/recorded.ts";
import { correctedPage, erratumText, pinnedText } from "./erratum/erratum.ts";
import { readMeOf } from "./read-me.ts";
import type { Show } from "./show.ts";
import { withoutTurns } from "./texts.ts";

/** The W3C's own parser and validator of WebVTT. */
const require = createRequire(import.meta.url);
const { WebVTTParser } = require("webvtt-parser");

const harm = `</title></style></script><script>alert(1)</script>"'><img src=x onerror=alert(1)> [a](javascript:alert(1)) \u202egnihton\u202c & *b* \u0627\u0644 数`;
const long = harm.repeat(Math.ceil(10_000 / harm.length)).slice(0, 10_000);

const board = fourByFour({
  more: `rules: [{ cage: { cells: r1c1 r1c2, sum: 3, note: ${JSON.stringify(harm)} } }]`,
});
const { plan } = planned(board);

/** A puzzle that no file can bring: longer than what is read, and with a link that is refused there. */
const hostilePuzzle = (words: string, link: string): Puzzle => ({
  ...board.puzzle,
  title: words,
  wording: `${words}\n${words}`,
  notes: words,
  setters: [{ name: words, link, permission: { show: "granted", page: "unknown", print: "asked", change: "refused" } }],
  grids: board.puzzle.grids.map((grid) => ({ ...grid, called: words })),
});

const recordedWith = (words: string): Recorded => ({
  take: performed(plan, board, 1).take,
  transcript: {
    words: words.split(" ").map((text, k) => ({ text: `${text}\n\n00:00.000 --> 00:09.000`, from: k, to: k + 1 })),
  },
  address: "https://example.org/?t={seconds}",
});

const showWith = (words: string, link: string): Show => {
  const puzzle = hostilePuzzle(words, link);
  const acts = plan.acts.map((act) => ({ ...act, title: words, open: words, close: words }));
  const solution = Object.fromEntries(board.canvas.names.map((cell) => [cell, 1]));
  return { board: { ...board, puzzle }, plan: { ...plan, acts }, solution, date: words, recorded: recordedWith(words) };
};

const assets = { page: `<title>${titleMark}</title><script type="application/json">${dataMark}</script>` };
const own = '<script type="application/json">';

const [firstBeat] = plan.acts[0]!.beats;
const files = [...packFiles, ...picturesAsked({ beats: [firstBeat!.n], dark: true })];

/** What in a text would run or lead somewhere; short, since the texts are long. */
const harmsIn = (text: string, harms: readonly RegExp[]): string[] =>
  harms.flatMap((harm) => harm.exec(text)?.[0].slice(0, 80) ?? []);

const harmsInMarkup = (markup: string): string[] => {
  const elements = markup.replace(own, "").replace(/<style>.*?<\/style>/gs, "");
  const values = [...elements.matchAll(/\s(?:href|src)="([^"]*)"/g)].map(([, value]) => value!);
  return [
    ...harmsIn(elements.replace(/"[^"]*"/g, '""'), [/<script/i, /<img/i, /<[^>]*\son[a-z]+\s*=/i]),
    ...values.filter((value) => !/^(#|https?:|mailto:)/i.test(value)).map((value) => value.slice(0, 80)),
  ];
};

const harmsInFile = (name: string, content: string | Uint8Array): string[] => {
  if (typeof content !== "string")
    return harmsIn(Buffer.from(content).toString("latin1"), [
      /\/(JavaScript|JS|OpenAction|Launch)\b/,
      /\/URI \(\s*(?!https?:|mailto:)/i,
    ]);
  if (/\.(html|svg)$/.test(name)) return harmsInMarkup(content);
  // Cue texts hold no markup and no second line of times; a file of them has no more cues than lines of times.
  if (/\.(vtt|srt)$/.test(name))
    return harmsIn(content.replace(/^\d\d:\d\d:\d\d[.,]\d{3} --> \d\d:\d\d:\d\d[.,]\d{3}$/gm, ""), [/[<>]/]);
  return name.endsWith(".md") ? harmsIn(content, [/(?<!\\)<(script|img)/, /(?<!\\)\]\(/]) : [];
};

describe.each([
  ["short", harm],
  ["10,000 characters", long],
])("hostile words, %s", (_, words) => {
  const show = showWith(words, "javascript:alert(1)");
  test.each(files.map(({ name, make }) => [name, make] as const))("%s harms nothing", (name, make) =>
    expect(harmsInFile(name, make(show, assets))).toEqual([]),
  );
  test.each(files.filter(({ name }) => name.endsWith(".vtt")))("$name is WebVTT by the W3C's validator", (file) => {
    const kind = file.name === "chapters.vtt" ? "chapters" : "captions/subtitles/descriptions";
    const { cues, errors } = new WebVTTParser().parse(withoutTurns(file.make(show, assets) as string), kind);
    expect(errors).toEqual([]);
    expect(cues.length).toBeGreaterThan(0);
  });
  test("a correction and a booklet harm nothing", () => {
    const corrected = { was: board, now: show.board, verdict: "one", differ: 0, note: words } as const;
    expect(erratumText(corrected).includes("<script>alert(1)</script>")).toBe(true); // plain text, letter by letter
    expect(pinnedText(corrected).length).toBeLessThanOrEqual(501);
    expect(harmsInFile("try-it.html", correctedPage(corrected, assets))).toEqual([]);
    expect(harmsInFile("booklet.pdf", bookletPdf({ title: words, puzzles: [show], paper: a4 }))).toEqual([]);
  });
});

test("the judge knows harm when it sees it", () => {
  expect(harmsInMarkup(harm).length).toBeGreaterThan(1);
  expect(harmsInMarkup('<a href="javascript:alert(1)">a</a>')).toEqual(["javascript:alert(1)"]);
  expect(harmsInMarkup('<p onclick="x">a</p>')).toHaveLength(1);
  expect(harmsInFile("a.md", harm)).toHaveLength(2);
  expect(harmsInFile("a.vtt", "00:00:01.000 --> 00:00:02.000\nx --> <i>")).toHaveLength(1);
  expect(harmsInFile("a.pdf", Buffer.from("/URI (javascript:x) /JS"))).toHaveLength(2);
});

test("a name is credited in one line, whatever it holds", () => {
  const show = showWith("Ivo\n\nLang", "https://example.org/");
  for (const name of ["description.txt", "rules.txt", "walkthrough.md"]) {
    const text = packFiles.find((file) => file.name === name)!.make(show, assets) as string;
    expect([name, /[bB]y Ivo Lang \(https:\/\/example\.org\/\)/.test(text)]).toEqual([name, true]);
  }
  expect(readMeOf(packFiles, show).split("\n")[0]).toBe("Ivo Lang, by Ivo Lang (https://example.org/)");
});

test("in pages the words are shown as they are", () => {
  const show = showWith(harm, "javascript:alert(1)");
  for (const { name, make } of packFiles.filter(({ name }) => /^(script|walkthrough)\.html$/.test(name)))
    expect([name, make(show, assets)]).toEqual([
      name,
      expect.stringContaining("&lt;script&gt;alert(1)&lt;/script&gt;"),
    ]);
});

test.each([
  ["https://example.org/?a=1&b=2", true],
  ["mailto:maud@example.org", true],
  ["javascript:alert(1)", false],
  ["data:text/html,<script>alert(1)</script>", false],
  ['https://example.org/" onmouseover="alert(1)', false],
])("%s is a link: %s", (link, isOne) => {
  for (const { name, make } of packFiles.filter(({ name }) => /^(script|walkthrough)\.html$/.test(name))) {
    const page = make(showWith("Four", link), assets) as string;
    expect([name, /<a href="(?!#)/.test(page)]).toEqual([name, isOne]);
    expect(harmsInMarkup(page)).toEqual([]);
  }
});
