import { compile, type Plan } from "@solvewright/engine";
import { puzzleOf } from "@solvewright/engine/test-kit";
import { describe, expect, test } from "vitest";
import { packFiles } from "../files/registry.ts";
import { dataMark, titleMark } from "../page/page-of.ts";
import { a4 } from "../paper/paper.ts";
import { coverSvg } from "./cover.ts";
import { letterToSetters, noteToSetters } from "./letters-to-setters.ts";
import { sheetPages } from "./sheet/sheet-pages.ts";
import type { Show } from "./show.ts";
import { suggestions } from "./suggestions.ts";
import { heldBack, onChanges } from "./wanted.ts";

const spoiler = "SPOILER";
const plan = {
  seconds: 600,
  rules: { title: spoiler, seconds: 10, lines: [] },
  acts: [{ title: spoiler, open: spoiler, close: spoiler, seconds: 590, beats: [] }],
  steps: [],
} as unknown as Plan;

const showBy = (setter: string, more: Partial<Show> = {}): Show => ({
  board: compile(puzzleOf(`puzzle: 1\ntitle: Low Water\nsetter: ${setter}\ngrids: [{ id: main, size: 4 }]\n`)),
  plan,
  solution: {},
  ...more,
});
const assets = { page: "" };
const letter = (show: Show): string => letterToSetters.make(show, assets) as string;
const note = (show: Show): string => noteToSetters.make(show, assets) as string;
const named = (permission: string): string => `{ name: Ivo Lang, permission: ${permission} }`;

describe("the letter", () => {
  test("asks for what is open and for nothing else", () => {
    const text = letter(showBy(named("{ show: granted, page: asked, print: unknown, change: refused }")));
    expect(text).toContain("page on which viewers can try it");
    expect(text).toContain("sheet to print");
    expect(text).not.toContain("solve it on camera");
    expect(text).not.toContain("1. change");
    expect(text).toContain("said no to changing it, so this is not asked again");
  });
  test.each(["own", "granted"])("asks nothing where all is %s", (permission) =>
    expect(letter(showBy(named(permission)))).toBe("Nothing is left to ask Ivo Lang.\n"),
  );
  test("who does not want the show is asked for nothing", () =>
    expect(letter(showBy(named("{ show: refused }")))).not.toContain("Dear"));
  test("who was asked for all of it is asked once more", () =>
    expect(letter(showBy(named("asked")))).toContain("ask once more"));
  test("each of several setters has a letter", () => {
    const text = letter(showBy("[{ name: Ivo Lang }, { name: Maud Ferrier }]"));
    expect(text.match(/^Dear .*$/gm)).toEqual(["Dear Ivo Lang,", "Dear Maud Ferrier,"]);
  });
});

describe("the note", () => {
  const date = "Friday 27 November 2026";
  test("tells the day, and what goes out with the setter's consent", () => {
    const text = note(showBy(named("{ show: granted, print: own }"), { date }));
    expect(text).toContain(date);
    expect(text).toContain("sheet to print");
    expect(text).not.toContain("page to try it on");
  });
  test("a minute is one minute", () => {
    const show = showBy(named("granted"), { date });
    expect(note({ ...show, plan: { ...show.plan, seconds: 50 } })).toContain("about one minute for it");
  });
  test("leaves a place for a day that is not known", () => expect(note(showBy(named("granted")))).toContain("[date]"));
  test("is not to be sent before the setter has agreed", () =>
    expect(note(showBy(named("asked"), { date }))).toMatch(/^Not to be sent yet/));
});

describe("what may not go out", () => {
  const heldFor = (show: Show): string[] => heldBack(packFiles, show).flatMap(({ files }) => files);
  test("sheets wait for the consent to print, the page for its own", () => {
    expect(heldFor(showBy(named("{ show: granted, page: granted, print: asked }")))).toEqual(
      packFiles.map(({ name }) => name).filter((name) => /^(sheet|solution)-.*\.pdf$/.test(name)),
    );
    expect(heldFor(showBy(named("{ show: granted, page: refused, print: own }")))).toEqual(["try-it.html"]);
  });
  test("without the consent to show nothing goes out but what the presenter keeps", () => {
    const held = new Set(heldFor(showBy(named("{ page: granted, print: granted }"))));
    const free = packFiles.map(({ name }) => name).filter((name) => !held.has(name));
    for (const name of free) expect(name).toMatch(/^(script\.|cue-cards\.pdf|letter-to-setter\.txt|cut-list\.txt)/);
  });
  test("a changed puzzle waits for the consent to change, and is never the setter's own", () => {
    const agreed = named("{ show: granted, page: granted, print: granted }");
    expect(heldFor(showBy(agreed))).toEqual([]);
    expect(heldFor(showBy(agreed, { isChanged: true }))).toContain("rules.txt");
    for (const permission of ["granted", "asked", "refused", "unknown"])
      for (const isChanged of [true, false])
        expect(onChanges(showBy(named(permission), { isChanged }))).toMatch(
          /(may not go out|and not) as Ivo Lang's own|never as Ivo Lang's own/,
        );
  });
});

describe("the suggestions", () => {
  const text = (title: string): string => {
    const show = showBy(named("granted"));
    const puzzle = { ...show.board.puzzle, title };
    return suggestions.make({ ...show, board: { ...show.board, puzzle } }, assets) as string;
  };
  const lines = (all: string): string[] => all.match(/^\d\. .*$/gm) ?? [];
  test("know nothing of the way through the puzzle", () => expect(text("Low Water")).not.toContain(spoiler));
  test.each(["Low Water", "x".repeat(90), "x".repeat(10_000)])("keep to the limits of sites", (title) => {
    const [titles, texts] = text(title).split("Short texts") as [string, string];
    for (const line of lines(titles)) expect([...line].length).toBeLessThanOrEqual(103);
    for (const line of lines(texts)) expect([...line].length).toBeLessThanOrEqual(283);
    if (title.length < 100) expect(lines(texts).length).toBeGreaterThan(0);
  });
});

test("nothing that names the setter presents a changed puzzle as the setter's own", () => {
  const show = { ...showBy(named("granted"), { isChanged: true }), plan: { ...plan, meets: [], leftOut: [] } };
  const page = `${titleMark}<script type="application/json">${dataMark}</script>`;
  const contents = packFiles
    .filter(({ needs }) => needs.includes("consent"))
    .map(({ name, make }) => [name, make(show as unknown as Show, { page })] as const);
  for (const [name, content] of contents) {
    if (typeof content !== "string" || !content.includes("Ivo Lang") || name.startsWith("note-")) continue;
    expect([name, /changed (from a puzzle by|since)/i.test(content)]).toEqual([name, true]);
  }
  const cover = coverSvg(show.board, { isChanged: true });
  expect(cover).toContain("changed from a puzzle by");
  expect(sheetPages({ board: show.board, paper: a4, isChanged: true })[0]).toContain("changed from a puzzle by");
});
