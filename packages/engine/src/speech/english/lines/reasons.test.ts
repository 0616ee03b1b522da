import { expect, test } from "vitest";
import { puzzleOf } from "../../../../test-kit/puzzles.ts";
import { tiny } from "../../../../test-kit/tiny.ts";
import type { Board } from "../../../board/board.ts";
import { compile } from "../../../board/compile.ts";
import { digitsOf } from "../../../board/digits.ts";
import { startOf } from "../../../board/knowledge.ts";
import { claimOf } from "../../../deduce/claim.ts";
import type { Deduction } from "../../../deduce/deduction.ts";
import { definitionOf } from "../../../prove/definition.ts";
import { prove } from "../../../prove/prove.ts";
import { cellNamed } from "../../../puzzle/canvas.ts";
import { textOf } from "../../line.ts";
import { phrase } from "../../phrase.ts";

interface Told {
  readonly rule: string;
  /** False where the step needs no clue and the board has one all the same. */
  readonly isUsed?: false;
  readonly technique?: string;
  /** Further clues that the step uses. */
  readonly also?: readonly string[];
  readonly givens?: string;
  readonly places?: Readonly<Record<string, number>>;
  readonly removes?: Readonly<Record<string, readonly number[]>>;
  readonly facts?: Readonly<Record<string, readonly number[]>>;
  readonly houses?: readonly string[];
  readonly size?: number;
}

const byCell = <T, S>(board: Board, of: Readonly<Record<string, T>>, to: (value: T) => S) =>
  new Map(Object.entries(of).map(([name, value]) => [cellNamed(board.canvas, name)!, to(value)]));

/** The line of a step, on a board of 1 to 6 without boxes where not said, once the prover has agreed that the step is true. */
const said = (told: Told) => {
  const { rule, technique = "clue-cases", places = {}, removes = {}, facts = {}, houses = [], size = 6 } = told;
  const board = compile(puzzleOf(tiny([rule, ...(told.also ?? [])], { size }, told.givens)));
  const deduction: Deduction = {
    technique,
    level: 2,
    places: byCell(board, places, (digit) => digit),
    removes: byCell(board, removes, digitsOf),
    spots: [],
    relates: [],
    because: {
      facts: byCell(board, facts, digitsOf),
      spots: [],
      relations: [],
      houses: houses.map((house) => `tiny/${house}`),
      rules: told.isUsed === false ? [] : board.rules.map(({ id }) => id),
    },
  };
  expect(prove(claimOf(board, deduction), definitionOf(board))).toEqual({ verdict: "proved" });
  const line = (style: "pointing" | "placed"): string => textOf(phrase(deduction, startOf(board), board, style));
  return { pointing: line("pointing"), placed: line("placed") };
};

test("sandwich: between 1 and 6 only 2 + 4 + 5 is 11, and of six cells the third is in every three that have one on each side", () => {
  const { pointing, placed } = said({
    rule: "sandwich: { row: 1, sum: 11 }",
    removes: { r1c3: [1, 3, 6] },
    houses: ["row/1"],
  });
  expect(pointing).toBe(
    "This row's sandwich of 11: 11 can only be 2, 4 and 5. This place is always between the slices, so this can only be 2, 4 or 5.",
  );
  expect(placed).toContain("11 can only be 2, 4 and 5");
});

test("skyscraper: a 5 in front shows itself and at most the 6", () =>
  expect(said({ rule: "skyscraper: { column: 1, from: top, sees: 3 }", removes: { r1c1: [5, 6] } }).pointing).toBe(
    "This skyscraper clue of 3: 5 or 6 in front leaves at most two to be seen. So there's no 5 or 6 here.",
  ));

test("skyscraper: behind a 1, a 5 and the 6 after it make three", () =>
  expect(
    said({
      rule: "skyscraper: { row: 1, from: left, sees: 2 }",
      places: { r1c2: 6 },
      facts: { r1c1: [1] },
      houses: ["row/1"],
      givens: "{ r1c1: 1 }",
    }).pointing,
  ).toBe("This row's skyscraper clue of 2: with 2 to 5 at least three are seen, so this is a 6."));

test("x-sum: 2 + 6 is 8, and 5 + 1 + 2 + 3 + 4 is 15", () => {
  const { pointing, placed } = said({
    rule: "x-sum: { row: 1, from: left, sum: 12 }",
    removes: { r1c1: [1, 2, 5, 6] },
    houses: ["row/1"],
  });
  expect(pointing).toBe(
    "This row's X-sum of 12: with 1 or 2 first it's at most 8. With 5 or 6 first it's at least 15, so this can only be 3 or 4.",
  );
  expect(placed).toContain("with 1 or 2 first it's at most 8");
});

test("x-sum: a 3 first counts three cells, and 12 - 3 - 4 is 5", () =>
  expect(
    said({
      rule: "x-sum: { row: 1, from: left, sum: 12 }",
      places: { r1c3: 5 },
      facts: { r1c1: [3], r1c2: [4] },
      givens: "{ r1c1: 3, r1c2: 4 }",
    }).pointing,
  ).toBe("This X-sum of 12: only three cells count, and 3 and 4 make 7, which leaves 5. So this is a 5."));

test("numbered room: a 1 in the first cell would have to be the 6 itself", () =>
  expect(said({ rule: "numbered-room: { row: 1, from: left, digit: 6 }", removes: { r1c1: [1] } }).pointing).toBe(
    "This numbered room of 6: a 1 first would point at itself, so there's no 1 here.",
  ));

test("numbered room: the first digit says where", () =>
  expect(
    said({
      rule: "numbered-room: { row: 1, from: left, digit: 6 }",
      places: { r1c4: 6 },
      facts: { r1c1: [4] },
      givens: "{ r1c1: 4 }",
    }).pointing,
  ).toBe("This numbered room of 6: the first digit, a 4, points at the fourth cell, so this is a 6."));

test("arrow: 6 less 4 leaves at most 2", () => {
  const { pointing, placed } = said({
    rule: "arrow: { total: r1c1, along: r1c2 r1c3 }",
    removes: { r1c3: [3, 4, 5, 6] },
    facts: { r1c2: [4] },
    givens: "{ r1c2: 4 }",
  });
  expect(pointing).toBe(
    "This arrow: its circle is at most 6, and the other one along it is 4. So this can only be 1 or 2.",
  );
  expect(placed).toBe(
    "The arrow at row 1, column 1: its circle is at most 6, and the other one along it is 4. So row 1, column 3 can only be 1 or 2.",
  );
});

test("double arrow: 6 + 1 is more than one digit can be", () =>
  expect(said({ rule: "double-arrow: r1c1 r1c2 r1c3", removes: { r1c1: [6] } }).pointing).toBe(
    "This double arrow: the digit between is at most 6, and the other circle is at least 1. So there's no 6 here.",
  ));

test("region sums: two cells of a row make 1 + 2 at least, and so does the one across the border", () =>
  expect(
    said({ rule: "region-sum-line: r1c2 r1c3 r1c4", removes: { r1c2: [1, 2] }, houses: ["row/1"], size: 4 }).pointing,
  ).toBe(
    "This box sum line lies in one row, so its digits differ. Another piece makes at least 3, so this can only be 3 or 4.",
  ));

test("counting circles: three of them can't hold four 4s", () =>
  expect(said({ rule: "counting-circles: r1c1 r2c2 r3c3", removes: { r1c1: [4] }, size: 4 }).pointing).toBe(
    "This set of counting circles: a 4 means four circles with a 4, and at most three can have one. So there's no 4 here.",
  ));

test("index line: the digit says where the number stands, and the line's own number is not read out", () =>
  expect(
    said({ rule: "index-line: { row: 2 }", places: { r3c1: 2 }, facts: { r2c1: [3] }, givens: "{ r2c1: 3 }", size: 4 })
      .pointing,
  ).toBe("This index row: its index digit 3 puts the 2 there, so this is a 2."));

test("frame sum: two different digits make 4 as 1 + 3 only", () =>
  expect(
    said({
      rule: "frame-sum: { row: 1, from: left, sum: 4, over: 2 }",
      removes: { r1c1: [2, 4, 5, 6] },
      houses: ["row/1"],
    }).pointing,
  ).toBe("This row's frame sum of 4 can only be 1 and 3, so this can only be 1 or 3."));

test("product cage: 12 / 5 is not whole, and 12 / 1 is no digit", () =>
  expect(said({ rule: "product-cage: { cells: r1c1 r1c2, product: 12 }", removes: { r1c1: [1, 5] } }).pointing).toBe(
    "This product cage of 12: 12 doesn't divide by 5, and with a 1 the other one can't be 12. So there's no 1 or 5 here.",
  ));

test("product cage: 2 x 3 x 4 is 24, and twice that is more than 36", () =>
  expect(
    said({
      rule: "product-cage: { cells: r1c1 r1c2 r1c3 r1c4, product: 36 }",
      places: { r1c1: 1 },
      facts: { r1c2: [2, 3, 4, 5, 6], r1c3: [2, 3, 4, 5, 6], r1c4: [2, 3, 4, 5, 6] },
    }).pointing,
  ).toBe("This product cage of 36: the other three multiply to at least 24, which leaves at most 1. So this is a 1."));

test("little killer: three digits make 4 as 1 + 1 + 2 only", () =>
  expect(
    said({ rule: "little-killer: { cells: r1c3 r2c2 r3c1, sum: 4 }", removes: { r2c2: [3, 4, 5, 6] } }).pointing,
  ).toBe("This little killer of 4 can only be two 1s and a 2. So this can only be 1 or 2."));

test("cage: two different digits make 4 as 1 + 3 only", () =>
  expect(said({ rule: "cage: { cells: r1c1 r1c2, sum: 4 }", removes: { r1c1: [2, 4, 5, 6] } }).pointing).toBe(
    "This cage of 4 can only be 1 and 3, so this can only be 1 or 3.",
  ));

test("cage: where both cells keep the same two digits, that is all there is to say", () =>
  expect(
    said({
      rule: "cage: { cells: r1c1 r1c2, sum: 4 }",
      removes: { r1c1: [2, 4, 5, 6], r1c2: [2, 4, 5, 6] },
      facts: { r1c1: [1, 2, 3, 4, 5] },
    }).pointing,
  ).toBe("This cage of 4 leaves 1 and 3 for these two."));

test.each([
  ["an X", "xv-x: r1c1 r1c2", "By the X at row 1, columns 1 and 2: row 1, column 1 is a 4, so row 1, column 2 is a 6."],
  [
    "a palindrome",
    "palindrome: r1c1 r1c2 r2c3 r3c2",
    "By the palindrome at row 1, column 1: row 1, column 1 is a 4, so row 3, column 2 is a 4 too.",
  ],
])("%s, where places are named: first the clue, so that no two places run into one another", (_, rule, line) =>
  expect(
    said({
      rule,
      places: rule.startsWith("xv") ? { r1c2: 6 } : { r3c2: 4 },
      facts: { r1c1: [4] },
      givens: "{ r1c1: 4 }",
    }).placed,
  ).toBe(line),
);

test("a pair in a cage: 3 and 4 leave 3 for the other two of 10, which says more than that they are nowhere else", () =>
  expect(
    said({
      rule: "cage: { cells: r1c1 r2c1 r2c2 r1c2, sum: 10 }",
      technique: "naked-pair",
      facts: { r2c1: [3, 4], r2c2: [3, 4] },
      removes: { r1c1: [3, 4, 5, 6] },
    }).pointing,
  ).toBe("3 and 4 fill these two cells in this cage of 10, so this can only be 1 or 2."));

test("sum line: no run of 3 holds a 4", () =>
  expect(said({ rule: "sum-line: { cells: r1c1 r1c2, sum: 3 }", removes: { r1c1: [4, 5, 6] } }).pointing).toBe(
    "This sum line of 3: a 4 alone is already more than 3. So this can only be 1, 2 or 3.",
  ));

test("zipper line: 6 + 1 is more than the middle can be", () =>
  expect(said({ rule: "zipper-line: r1c1 r1c2 r1c3", removes: { r1c1: [6] } }).pointing).toBe(
    "This zipper line: the middle is at most 6, and the other one of its pair is at least 1. So there's no 6 here.",
  ));

test("equal sums: two cells make at least 2", () =>
  expect(said({ rule: "same-sum: { areas: [r1c1, r2c1 r3c2] }", removes: { r1c1: [1] } }).pointing).toBe(
    "This pair of equal sums: the other area makes at least 2, so there's no 1 here.",
  ));

test("the only place by two clues: what each can be at all is said of each", () => {
  const { pointing, placed } = said({
    rule: "cage: { cells: r1c1 r2c1, sum: 3 }",
    also: ["cage: { cells: r1c2 r2c2 r3c2, sum: 6 }"],
    technique: "only-place-by-clues",
    places: { r1c5: 5 },
    facts: { r1c3: [3], r1c4: [4], r1c6: [6] },
    houses: ["row/1"],
    givens: "{ r1c3: 3, r1c4: 4, r1c6: 6 }",
  });
  expect(pointing).toBe(
    "5 in this row: this cage of 3 can only be 1 and 2. The other can only be 1, 2 and 3, so it's here.",
  );
  expect(placed).toBe(
    "5 in row 1: the cage of 3 at column 1, rows 1 and 2 can only be 1 and 2. The cage of 6 at row 1, column 2 can only be 1, 2 and 3. So it is in row 1, column 5.",
  );
});

test("the only place by a clue: beside 4, 5 and 6 a sum of 5 is 2 + 3, and the clue says so", () => {
  const { pointing, placed } = said({
    rule: "frame-sum: { row: 1, from: right, sum: 5, over: 2 }",
    technique: "only-place-by-clues",
    places: { r1c4: 1 },
    facts: { r1c1: [4], r1c2: [5], r1c3: [6] },
    houses: ["row/1"],
    givens: "{ r1c1: 4, r1c2: 5, r1c3: 6 }",
  });
  expect(pointing).toBe("This frame sum of 5 can't have the 1 of this row: it can only be 2 and 3. So it's here.");
  expect(placed).toBe(
    "The frame sum of 5 at row 1, columns 5 and 6 can't have the 1 of row 1: it can only be 2 and 3. So it is in row 1, column 4.",
  );
});

test("a house and a clue together: with 2 or 3 below, two different digits that make 3 or 4 have the 1", () =>
  expect(
    said({
      rule: "cage: { cells: r1c1 r1c2 r2c1, sum: 6 }",
      technique: "joint-cases",
      removes: { r1c6: [1] },
      facts: { r2c1: [2, 3] },
      houses: ["row/1"],
    }).pointing,
  ).toBe("However we fill this cage of 6, it has a 1 in this row, so there's no 1 here."));

test("cells that lose different digits are not said to lose the same", () =>
  expect(
    said({
      rule: "numbered-room: { row: 1, from: left, digit: 5 }",
      removes: { r1c1: [1, 5], r1c5: [5] },
      houses: ["row/1"],
    }).pointing,
  ).toBe("This numbered room of 5 lies in one row, so its digits differ. It leaves no 1 or 5 here and no 5 here."));

test("a house by itself: two cells with the same two digits leave the third cell its own", () =>
  expect(
    said({
      rule: "even: r6c6",
      isUsed: false,
      technique: "house-cases",
      places: { r1c3: 1 },
      facts: { r1c1: [2, 3], r1c2: [2, 3], r1c3: [1, 2, 3] },
      houses: ["row/1"],
    }).pointing,
  ).toBe("2 and 3 fill those two cells, so this is a 1."));

test("either of two digits: a 4 beside it is seen, and with a 5 no more than a 1 fits on the arrow", () =>
  expect(
    said({
      rule: "arrow: { total: r2c1, along: r1c1 r1c2 }",
      technique: "joint-cases",
      removes: { r1c2: [4] },
      facts: { r1c1: [4, 5] },
      houses: ["row/1"],
    }).pointing,
  ).toBe(
    "That one is a 4 or a 5. With the 4, this one sees it; with the 5, this arrow leaves no 4 here. Either way there's no 4 here.",
  ));
