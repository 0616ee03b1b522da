import { describe, expect, test } from "vitest";
import { checksOf, fillings } from "../../test-kit/enumerate.ts";
import { cases } from "../../test-kit/kind-files.ts";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { tiny } from "../../test-kit/tiny.ts";
import { compile } from "../board/compile.ts";
import { only } from "../board/digits.ts";
import { solve } from "../search/solve.ts";
import type { Kind } from "./contract.ts";
import { kinds } from "./registry.ts";

/** Beside the kind's own cases: one in which the reading matters, where none of them is. */
const more: Readonly<Record<string, readonly string[]>> = {
  "product-cage": [tiny(["product-cage: { cells: r1c1 r2c3 r3c2, product: 8 }"])],
};

/** Boards with more solutions are counted only this far. */
const most = 700;

const read = kinds.flatMap((kind) => (kind.readings ?? []).map((reading) => ({ kind, reading, says: reading.says })));

test("the kinds that viewers ask about have another reading", () =>
  expect(read.map(({ kind }) => kind.name)).toEqual(
    expect.arrayContaining(["cage", "product-cage", "arrow", "little-killer", "all-dots-shown", "all-bars-shown"]),
  ));

describe.each(read)("$says", ({ kind, reading, says }) => {
  const other: Kind = {
    ...kind,
    scopes: (instance) => reading.scopes(kind.scopes(instance), instance),
    terms: (instance) => reading.terms(kind.terms(instance), instance),
  };
  const boards = [...cases.get(kind.name)!.boards, ...(more[kind.name] ?? [])].map((text) => {
    const puzzle = puzzleOf(text);
    return { text, ours: compile(puzzle), theirs: compile(puzzle, [...kinds.filter((each) => each !== kind), other]) };
  });

  test("is a clause", () => expect(says).toMatch(/^[a-z][^.]*[^.]$/));

  test("its terms mean what its scopes say", () => {
    for (const { text, theirs } of boards) {
      const cells = [...theirs.domains.keys()];
      const domains = theirs.domains.map((digits, cell) =>
        theirs.givens.has(cell) ? only(theirs.givens.get(cell)!) : digits,
      );
      const plain: string[] = [];
      for (const digits of fillings(cells, domains, checksOf(theirs))) if (plain.push(digits.join()) === most) break;
      const found = solve(theirs, { limit: most }).solutions.map((solution) => solution.join());
      if (plain.length === most) expect(found, text).toHaveLength(most);
      else expect(found.sort(), text).toEqual(plain.sort());
    }
  });

  test("is another than ours on some case", () => {
    const count = (board: ReturnType<typeof compile>): number => solve(board, { limit: 2000 }).solutions.length;
    expect(boards.some(({ ours, theirs }) => count(ours) !== count(theirs))).toBe(true);
  });
});
