import { describe, expect, test } from "vitest";
import { puzzleOf } from "../../../test-kit/puzzles.ts";
import { tiny } from "../../../test-kit/tiny.ts";
import { compile } from "../../board/compile.ts";
import type { RuleEntry } from "../../puzzle/puzzle.ts";
import type { Body } from "../../rules/contract.ts";
import { kinds } from "../../rules/registry.ts";
import type { Outcome } from "../../soundness/assumptions.ts";
import type { Verdict } from "../../soundness/verdict.ts";
import { wordsIn } from "../line.ts";
import { assumptionLine, mendLine, wordingLines } from "./soundness.ts";

const board = compile(
  puzzleOf(
    tiny(["kropke-white: r1c1 r1c2", "greater-than: r2c1 r2c2", "all-dots-shown", "anti-knight"], {}, "{ r4c4: 1 }"),
  ),
);

describe("assumptions", () => {
  const line = (reading: string, outcome: Outcome, verdict: Verdict): string =>
    assumptionLine({ reading, rule: "", outcome, verdict });

  test("are said with what comes of them", () => {
    expect(line("missing dots mean nothing", "needed", "several")).toBe(
      "If missing dots mean nothing, it has more than one solution. It needs our reading.",
    );
    expect(line("digits in a cage may repeat", "no difference", "one")).toBe(
      "If digits in a cage may repeat, it has the same one solution.",
    );
    expect(line("all dots are shown", "must be said", "none")).toBe(
      "If all dots are shown, it has no solution. The rules must say which is meant.",
    );
    expect(line("all dots are shown", "must be said", "one")).toBe(
      "If all dots are shown, it has one solution, but not this one. The rules must say which is meant.",
    );
  });

  test("every kind's clause makes sentences of at most twenty words", () => {
    const clauses = kinds.flatMap(({ readings = [], missing }) => [
      ...readings.map(({ says }) => says),
      ...(missing ? [missing.says] : []),
    ]);
    expect(clauses.length).toBeGreaterThan(12);
    for (const clause of clauses)
      for (const sentence of line(clause, "must be said", "none").split(/(?<=\.) /))
        expect(wordsIn(sentence), sentence).toBeLessThanOrEqual(20);
  });
});

describe("wordings", () => {
  test("what they lack and what they have alone", () =>
    expect(
      wordingLines(board, {
        unsaid: ["kropke-white", "greater-than", "all-dots-shown", "anti-knight"].map((rule) => ({ rule, ids: [] })),
        onlySaid: [{ rule: "all-bars-shown", says: "all bars are shown" }],
      }),
    ).toEqual([
      "A plain search for words doesn't find white dots, greater-than signs or knight's moves in the setter's own wording.",
      "A plain search for words doesn't find in the setter's own wording that all dots are shown.",
      "The setter's own wording seems to say that all bars are shown. The file has no such rule.",
    ]));
  test("no line where both agree", () => expect(wordingLines(board, { unsaid: [], onlySaid: [] })).toEqual([]));
});

describe("mends", () => {
  const nothing = { givens: new Map<number, number>(), rules: [], verdict: "one" as const };
  const place = (row: number, column: number) => ({ row, column });

  test("what is added", () => {
    const cells = [place(3, 1), place(3, 2)];
    const rules: RuleEntry[] = [
      { id: "kropke-white/2", kind: "kropke-white", body: { cells } as Body },
      { id: "all-bars-shown/1", kind: "all-bars-shown", body: {} },
    ];
    const given = new Map([[1, 4]]);
    expect(mendLine(board, { ...nothing, change: "add", givens: given })).toBe(
      "With a given 4 in row 1, column 2 it has exactly one solution.",
    );
    expect(mendLine(board, { ...nothing, change: "add", givens: given, rules })).toBe(
      "With a given 4 in row 1, column 2, a white dot at row 3, columns 1 and 2 and the rule that all bars are shown it has exactly one solution.",
    );
  });

  test("what is taken away", () => {
    const [dot] = board.puzzle.rules;
    expect(mendLine(board, { ...nothing, change: "remove", rules: [dot!], verdict: "several" })).toBe(
      "Without the white dot at row 1, columns 1 and 2 it has more than one solution.",
    );
    const whole = board.puzzle.rules.slice(2);
    expect(mendLine(board, { ...nothing, change: "remove", rules: whole })).toBe(
      `Without the rule that all dots are shown and the rule "No digit a knight's move away" it has exactly one solution.`,
    );
    expect(mendLine(board, { ...nothing, change: "remove", givens: new Map([[15, 1]]) })).toBe(
      "Without the given 1 in row 4, column 4 it has exactly one solution.",
    );
  });
});
