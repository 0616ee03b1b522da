import { describe, expect, test } from "vitest";
import { cases } from "../../../test-kit/kind-files.ts";
import { puzzleOf } from "../../../test-kit/puzzles.ts";
import { type Random, randomFrom } from "../../../test-kit/random.ts";
import type { Board, RuleInstance } from "../../board/board.ts";
import { compile } from "../../board/compile.ts";
import { type Digits, digitsOf, either, isEmpty, listOf, only, without } from "../../board/digits.ts";
import { casesOf } from "../../deduce/cases.ts";
import { leftByReasons } from "../../deduce/left-by-reasons.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import type { Term } from "../../terms/term.ts";
import type { Asked } from "../contract.ts";
import { kinds } from "../registry.ts";

const giving = kinds.filter(({ because }) => because);
const boardsOf = (kind: string): Board[] =>
  [...cases.get(kind)!.boards, cases.get(kind)!.example.puzzle].map((text) => compile(puzzleOf(text)));

interface Question {
  readonly asked: Omit<Asked, "removes">;
  /** By cell of the clue: what is known of it, and what of that some way to meet the clue uses. */
  readonly cells: readonly { readonly cell: Cell; readonly known: Digits; readonly possible: Digits }[];
}

const someOf = (random: Random, digits: Digits): Digits => {
  const list = random.shuffled(listOf(digits));
  return digitsOf(list.slice(0, 1 + random.below(list.length)));
};

/** Some facts about the clue's cells and some of the houses that they share. */
const question = (random: Random, board: Board, { id, kind, instance }: RuleInstance): Question | undefined => {
  const terms = kind.terms(instance);
  const cells = [...new Set(terms.flatMap((term) => term.cells))];
  const facts = new Map(
    cells.filter(() => random.below(3) > 0).map((cell) => [cell, someOf(random, board.domains[cell]!)]),
  );
  const touching = board.houses.filter((house) => house.cells.filter((cell) => cells.includes(cell)).length > 1);
  const houses = touching.filter(() => random.below(3) > 0);
  const reasons = { facts, spots: [], relations: [], houses: houses.map((house) => house.id), rules: [id] };
  const left = leftByReasons(reasons, board);
  const together = [
    ...houses.map((house) => house.cells),
    ...board.groups.filter(({ rule }) => rule === id).map((group) => group.cells),
  ];
  const apart = together.map((all): Term => {
    return { term: "different", owner: "", cells: all.filter((cell) => cells.includes(cell)) };
  });
  const possible = casesOf(cells, [...terms, ...apart]).possible(cells.map((cell) => left[cell]!));
  if (!possible || possible.some(isEmpty)) return undefined;
  return {
    asked: {
      known: (cell) => left[cell]!,
      differ: (a, b) => a !== b && together.some((all) => all.includes(a) && all.includes(b)),
    },
    cells: cells.map((cell, k) => ({ cell, known: left[cell]!, possible: possible[k]! })),
  };
};

const tries = 12;

describe.each(giving)("$name", ({ name, because }) => {
  const random = randomFrom(name.length * 7919);
  const questions = boardsOf(name).flatMap((board) =>
    board.rules
      .filter(({ kind }) => kind.name === name)
      .flatMap((rule) => Array.from({ length: tries }, () => ({ rule, asks: question(random, board, rule) }))),
  );
  const ask = (rule: RuleInstance, asks: Question, cell: Cell, out: Digits): string | undefined =>
    because!(rule.instance, { ...asks.asked, removes: new Map([[cell, out]]) });

  test("gives no reason for taking out what can be", () => {
    for (const { rule, asks } of questions)
      for (const { cell, known, possible } of asks?.cells ?? [])
        for (const digit of listOf(possible)) {
          expect(ask(rule, asks!, cell, only(digit)), `${cell} ${digit}`).toBeUndefined();
          expect(ask(rule, asks!, cell, either(only(digit), someOf(random, known)))).toBeUndefined();
        }
  });

  test("gives reasons, each a clause that can be spoken", () => {
    const said = questions.flatMap(({ rule, asks }) =>
      (asks?.cells ?? []).flatMap(({ cell, known, possible }) => {
        const out = without(known, possible);
        return isEmpty(out) ? [] : [ask(rule, asks!, cell, out)];
      }),
    );
    const clauses = said.filter((one) => one !== undefined);
    expect(clauses.length).toBeGreaterThan(0);
    for (const clause of clauses) {
      expect(clause).toMatch(/^[a-z0-9].*[a-z0-9]$/);
      expect(clause).not.toMatch(/undefined|NaN|Infinity| {2}|, ,|\b([a-z]+) \1\b/);
    }
  });
});
