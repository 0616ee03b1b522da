import { type Board, compile } from "@solvewright/engine";
import { puzzleOf } from "@solvewright/engine/test-kit";
import { describe, expect, test } from "vitest";
import { dataIn } from "../../../test-kit/unpacked.ts";
import { dataMark, titleMark } from "../../page/page-of.ts";
import { correctionsIn } from "./changes.ts";
import { type Corrected, correctedPage, erratumText, pinnedText } from "./erratum.ts";

interface Parts {
  readonly title?: string;
  readonly wording?: string;
  readonly givens?: string;
  readonly rules?: string;
}
const boardOf = ({
  title = "Low Water",
  wording,
  givens = "r1c1: 1",
  rules = "{ cage: { cells: r1c1 r1c2, sum: 3 } }",
}: Parts = {}): Board =>
  compile(
    puzzleOf(
      [
        "puzzle: 1",
        `title: ${JSON.stringify(title)}`,
        ...(wording ? [`wording: ${JSON.stringify(wording)}`] : []),
        "grids: [{ id: main, called: the grid, size: 4 }]",
        `givens: { cells: { ${givens} } }`,
        `rules: [${rules}]`,
      ].join("\n"),
    ),
  );
const right = boardOf();
const corrected = (was: Board, more: Partial<Corrected> = {}): Corrected => ({
  was,
  now: right,
  verdict: "one",
  differ: 0,
  ...more,
});

describe("what differs", () => {
  test("nothing between a puzzle and itself", () => expect(correctionsIn(right, boardOf())).toEqual([]));
  test("a given that is another, left out or too much", () => {
    const was = boardOf({ givens: "r1c1: 2, r4c4: 3" });
    expect(correctionsIn(was, right)).toEqual([
      { published: "Row 1, column 1: given 2.", right: "Row 1, column 1: given 1." },
      { published: "Row 4, column 4: given 3." },
    ]);
    expect(correctionsIn(right, was)[1]).toEqual({ right: "Row 4, column 4: given 3." });
  });
  test("a clue of the same cells with another number is one change", () =>
    expect(correctionsIn(boardOf({ rules: "{ cage: { cells: r1c1 r1c2, sum: 4 } }" }), right)).toEqual([
      { published: "Cage of 4: row 1, columns 1 and 2.", right: "Cage of 3: row 1, columns 1 and 2." },
    ]));
  test("a clue that was left out, and one that is no part of the puzzle", () => {
    expect(correctionsIn(boardOf({ rules: "" }), right)).toEqual([{ right: "Cage of 3: row 1, columns 1 and 2." }]);
    expect(correctionsIn(right, boardOf({ rules: "" }))).toEqual([{ published: "Cage of 3: row 1, columns 1 and 2." }]);
  });
  test("a rule of the whole grid", () =>
    expect(
      correctionsIn(right, boardOf({ rules: "{ cage: { cells: r1c1 r1c2, sum: 3 } }, anti-king" }))[0]!.right,
    ).toMatch(/touch/));
  test("title and wording", () => {
    const was = boardOf({ title: "Low Watr", wording: "Usual rules." });
    expect(correctionsIn(was, right).map(({ published }) => published)).toEqual([
      "Title: Low Watr",
      "The rules in the setter's words: Usual rules.",
    ]);
  });
});

describe("the texts", () => {
  const was = boardOf({ givens: "r1c1: 2" });
  test("say what was wrong, what is right and what it means", () => {
    for (const text of [erratumText(corrected(was, { differ: 3 })), pinnedText(corrected(was, { differ: 3 }))]) {
      expect(text).toContain("Row 1, column 1: given 1");
      expect(text).toContain("differs in three cells");
      expect(text).toContain("still there");
    }
    expect(erratumText(corrected(was, { verdict: "several" }))).toContain("more than one solution");
    expect(erratumText(corrected(was, { verdict: "none" }))).toContain("no solution");
  });
  test("a slip in the video alone leaves the puzzle as it is", () => {
    const text = erratumText(corrected(right, { note: "At 4:05 I say 3; it is a 5." }));
    expect(text).toContain("At 4:05");
    expect(text).toContain("The puzzle itself is the same");
  });
  test.each([1, 40, 16_000])("the text to pin is at most 500 characters after a note of %i", (length) => {
    const all = boardOf({ givens: "r1c1: 2, r1c2: 1, r2c1: 3, r4c4: 4, r3c3: 2, r4c1: 1, r2c3: 1" });
    expect(pinnedText(corrected(all, { note: "x".repeat(length) })).length).toBeLessThanOrEqual(501);
  });
});

describe("the page that takes the place of the old one", () => {
  const page = `${titleMark}<script type="text/plain" id="puzzle">${dataMark}</script>`;
  const dataOf = (corrected: Corrected) => dataIn(correctedPage(corrected, { page })) as Record<string, unknown>;
  test("knows under which name its progress was kept", () => {
    const was = boardOf({ givens: "r1c1: 2" });
    const before = dataOf({ was, now: was, verdict: "one", differ: 0, note: "x" });
    const after = dataOf(corrected(was));
    expect(after.formerly).toBe(before.fingerprint);
    expect(after.fingerprint).not.toBe(before.fingerprint);
  });
  test("keeps its name where only words were wrong", () => {
    const data = dataOf(corrected(boardOf({ title: "Low Watr" })));
    expect(data.formerly).toBeUndefined();
  });
});
