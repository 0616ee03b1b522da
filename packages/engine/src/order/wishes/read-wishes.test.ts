import { describe, expect, test } from "vitest";
import { readWishes, wishForms } from "./read-wishes.ts";
import { type Wish, wishSchema } from "./wish.ts";

const asked = (...lines: string[]): string => ["wishes: 1", "ask:", ...lines.map((line) => `  - ${line}`)].join("\n");
const told = (text: string) =>
  readWishes(text).problems.map(({ line, column, read, right }) => ({ line, column, read, right }));

test("a list of wishes and what the audience has met", () => {
  const { wishes, met, problems } = readWishes(
    `${asked("{ wish: first, cell: r4c5 }", "{ wish: level, most: 3 }")}\nmet: [cage, naked-pair, what-if]\n`,
  );
  expect(problems).toEqual([]);
  expect(wishes).toEqual([
    { wish: "first", cell: "r4c5" },
    { wish: "level", most: 3 },
  ]);
  expect(met).toEqual(["cage", "naked-pair", "what-if"]);
});

test("a list may ask for nothing", () =>
  expect(readWishes("wishes: 1\n")).toEqual({ wishes: [], met: [], problems: [] }));

test.each(Object.entries(wishForms))("%s is written as its form says", (name, form) => {
  const { wishes, problems } = readWishes(asked(form.split(", or ")[0]!));
  expect(problems).toEqual([]);
  expect(wishes.map(({ wish }) => wish)).toEqual([name]);
  expect(wishes.map((wish) => wishSchema.parse(JSON.parse(JSON.stringify(wish))))).toEqual(wishes);
});

test.each<Wish>([
  { wish: "another", cell: "r4c5", way: { technique: "only-place", by: ["main/row/4"] } },
  { wish: "another", gone: { r4c5: [1, 2] }, way: { technique: "clue-cases", by: ["cage/2"] } },
])("one way alone reads back as it was: %j", (wish) =>
  expect(readWishes(asked(JSON.stringify(wish)))).toEqual({ wishes: [wish], met: [], problems: [] }),
);

describe("what is wrong is told at its place, and the rest is read all the same", () => {
  test("an unknown wish", () =>
    expect(told(asked("{ wish: frist, cell: r4c5 }", "{ wish: level, most: 3 }"))).toEqual([
      { line: 3, column: 13, read: "frist", right: expect.stringContaining("the nearest is first") },
    ]));
  test("a wish that lacks its cell shows how it is written", () => {
    const { wishes, problems } = readWishes(asked("{ wish: first }", "{ wish: level, most: 3 }"));
    expect(wishes).toEqual([{ wish: "level", most: 3 }]);
    expect(problems).toMatchObject([{ line: 3, right: wishForms.first, path: "ask/0" }]);
  });
  test("a name that is no kind and no technique", () =>
    expect(told("wishes: 1\nmet: [naked-piar]")).toEqual([
      { line: 2, column: 7, read: "naked-piar", right: expect.stringContaining("the nearest is naked-pair") },
    ]));
  test("another version", () =>
    expect(told("wishes: 2")).toMatchObject([{ line: 1, column: 9, right: expect.stringContaining("wishes: 1") }]));
  test("no version", () => expect(told("met: [cage]")).toMatchObject([{ line: 1, read: "no version" }]));
  test("an unknown key", () =>
    expect(told("wishes: 1\nasks: []")).toMatchObject([
      { line: 2, right: expect.stringContaining("the nearest is ask") },
    ]));
  test("no list", () => expect(told("wishes: 1\nask: first")).toMatchObject([{ line: 2, right: "a list of wishes" }]));
  test.each(["", "just words", "- a\n- b", "wishes: [", "wishes: 1\nask: &a [*a]"])("%j is no list of wishes", (text) =>
    expect(told(text)).not.toEqual([]),
  );
});
