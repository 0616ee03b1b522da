import { describe, expect, test } from "vitest";
import { audit } from "../../../test-kit/audit.ts";
import { planned } from "../../../test-kit/planned.ts";
import { puzzleOf } from "../../../test-kit/puzzles.ts";
import { tiny } from "../../../test-kit/tiny.ts";
import type { Board } from "../../board/board.ts";
import { compile } from "../../board/compile.ts";
import { startOf, withRelated } from "../../board/knowledge.ts";
import type { Related } from "../../board/related.ts";
import { definitionOf } from "../../prove/definition.ts";
import { prove } from "../../prove/prove.ts";
import { textOf } from "../../speech/line.ts";
import { phrase } from "../../speech/phrase.ts";
import { claimOf } from "../claim.ts";
import type { Deduction } from "../deduction.ts";
import { techniques } from "../registry.ts";
import { byRelation, relations } from "./relations.ts";

const six = (...rules: string[]): Board => compile(puzzleOf(tiny(rules, { size: 6 })));
const verdictOf = (board: Board, deduction: Deduction) => prove(claimOf(board, deduction), definitionOf(board)).verdict;
const said = (board: Board, deduction: Deduction): string =>
  textOf(phrase(deduction, startOf(board), board, "pointing"));

/** A relation of this sort that leads somewhere from the start, and what a clue gives with it. */
const ledBy = (board: Board, sort: Related["relation"]): { readonly tie: Deduction; readonly gives: Deduction[] } => {
  const tie = [...relations.find(startOf(board), board)].find(({ relates }) => relates[0]?.relation === sort)!;
  return { tie, gives: [...byRelation.find(withRelated(startOf(board), tie.relates), board)] };
};

/** The same relation with another sum, or turned round: what must not be provable. */
const wrong = (related: Related): Related => {
  switch (related.relation) {
    case "sum":
      return { ...related, is: related.is + 1 };
    case "parity":
      return { ...related, is: related.is === "same" ? "different" : "same" };
    case "less":
      return { ...related, cells: [related.cells[1], related.cells[0]] };
    case "same":
      return { relation: "less", cells: related.cells };
  }
};

const cases: readonly [string, Board, Related["relation"], string, RegExp][] = [
  [
    "21 less two cages of 5 and 7 leaves 9 for two cells, and 12 less 9 is 3",
    six("cage: [{ cells: r1c3 r1c4, sum: 5 }, { cells: r1c5 r1c6, sum: 7 }, { cells: r1c1 r1c2 r2c1, sum: 12 }]"),
    "sum",
    "r2c1 = 3",
    /make 9\.$/,
  ],
  [
    "one cell out, one in: what the thermometer keeps from the one, the other can't be either",
    compile(puzzleOf(tiny(["thermometer: r2c1 r3c1 r4c1"], { size: 4, regions: "'aaab abbb cccd cddd'" }))),
    "same",
    "r1c4 not 3 4",
    /those two are the same digit\.$/,
  ],
  [
    "two white dots: their far ends are both odd or both even, so the rest of the arrow is even, 4 at most",
    six("kropke-white: [r1c1 r1c2, r1c2 r2c2]", "arrow: { total: r1c1, along: r2c2 r3c3 }"),
    "parity",
    "r3c3 not 1 3 5 6",
    /both odd or both even\.$/,
  ],
  [
    "lower than one that is lower: of 1 + 4 and 2 + 3 the lower goes there",
    six("greater-than: [r1c2 r1c1, r2c2 r1c2]", "cage: { cells: r1c1 r2c2, sum: 5 }"),
    "less",
    "r1c1 not 3 4 5 6",
    /lower than/,
  ],
];

const outcomes = (board: Board, all: readonly Deduction[]): string[] =>
  all.flatMap(({ places, removes }) => [
    ...[...places].map(([cell, digit]) => `${board.canvas.names[cell]} = ${digit}`),
    ...[...removes].map(([cell, digits]) => {
      const gone = Array.from({ length: 32 }, (_, digit) => digit).filter((digit) => ((digits >> digit) & 1) === 1);
      return `${board.canvas.names[cell]} not ${gone.join(" ")}`;
    }),
  ]);

describe.each(cases)("%s", (_, board, sort, outcome, line) => {
  const { tie, gives } = ledBy(board, sort);
  test("the relation is found and proved, and its opposite is not", () => {
    expect(verdictOf(board, tie)).toBe("proved");
    expect(verdictOf(board, { ...tie, relates: tie.relates.map(wrong) })).toBe("refused");
  });
  test("a clue with it gives more, which is proved with it and not without", () => {
    expect(outcomes(board, gives)).toContain(outcome);
    for (const step of gives) {
      expect(verdictOf(board, step)).toBe("proved");
      expect(step.because.relations).toEqual(tie.relates);
    }
    const bare = gives.map((step) => verdictOf(board, { ...step, because: { ...step.because, relations: [] } }));
    expect(bare).toContain("refused");
  });
  test("it is said", () => expect(said(board, tie)).toMatch(line));
});

test("a show that leans on a relation has said it in the same breath or says it again, and holds", () => {
  const board = six(
    "cage: [{ cells: r1c3 r1c4, sum: 5 }, { cells: r1c5 r1c6, sum: 7 }, { cells: r1c1 r1c2 r2c1, sum: 12 }]",
  );
  const ladder = techniques.filter(({ name }) => !["sums-left", "joint-cases", "house-cases"].includes(name));
  const { plan } = planned(board, { ladder, level: 3 });
  const [tie, step] = ["relation", "by-relation"].map((name) => plan.steps.find(({ technique }) => technique === name));
  expect(step?.because.relations).toEqual(tie?.relates);
  expect(step?.places).toEqual({ r2c1: 3 });
  expect(audit(plan, board)).toEqual({ faults: [], unshown: [] });
  const untold = { ...plan, steps: plan.steps.map((one) => (one === tie ? { ...one, relates: [] } : one)) };
  expect(audit(untold, board).unshown).not.toEqual([]);
});
