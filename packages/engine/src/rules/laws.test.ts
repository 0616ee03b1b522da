import { describe, expect, test } from "vitest";
import { assignmentsBy, restrictedAround } from "../../test-kit/assignments.ts";
import { checkOfScope, checkOfTerm, checksOf, fillings } from "../../test-kit/enumerate.ts";
import { cases, oracles } from "../../test-kit/kind-files.ts";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { randomFrom } from "../../test-kit/random.ts";
import { unsupported } from "../../test-kit/supports.ts";
import { compile } from "../board/compile.ts";
import { only } from "../board/digits.ts";
import { solve } from "../search/solve.ts";
import { kinds } from "./registry.ts";

/** Boards with more solutions are counted only this far. */
const most = 700;

test.each(kinds)("$name has cases and an oracle", ({ name }) => {
  expect(cases.get(name)?.boards.length, `${name}.cases.ts`).toBeGreaterThan(3);
  expect(oracles.has(name), `${name}.oracle.ts`).toBe(true);
});

test("every case and oracle is of a kind in the registry", () => {
  const names = kinds.map(({ name }) => name);
  expect([...cases.keys(), ...oracles.keys()].filter((name) => !names.includes(name))).toEqual([]);
});

describe.each(kinds.filter(({ name }) => cases.has(name)))("$name", (kind) => {
  const boards = cases.get(kind.name)!.boards.map((text) => ({ text, board: compile(puzzleOf(text)) }));
  const own = boards.flatMap(({ text, board }) =>
    board.rules.filter((rule) => rule.kind.name === kind.name).map((rule) => ({ text, board, rule })),
  );

  test("terms mean what the scopes say", () => {
    for (const [index, { text, board, rule }] of own.entries()) {
      const scopes = rule.scopes.map((scope) => checkOfScope(scope, board.domains));
      const terms = board.terms.filter(({ owner }) => owner === rule.id).map(checkOfTerm);
      const cells = [...new Set([...scopes, ...terms].flatMap((check) => check.cells))];
      const around = solve(board, { limit: 20 }).solutions;
      for (const domains of restrictedAround(cells, board.domains, around, randomFrom(index + 1)))
        expect(assignmentsBy(cells, domains, terms), text).toEqual(assignmentsBy(cells, domains, scopes));
    }
  });

  test("search finds what plain enumeration finds", () => {
    for (const { text, board } of boards) {
      const found = solve(board, { limit: most });
      const cells = [...board.domains.keys()];
      const domains = board.domains.map((digits, cell) =>
        board.givens.has(cell) ? only(board.givens.get(cell)!) : digits,
      );
      const plain: string[] = [];
      for (const digits of fillings(cells, domains, checksOf(board))) if (plain.push(digits.join()) === most) break;
      if (plain.length === most) expect(found.solutions, text).toHaveLength(most);
      else expect(found.solutions.map((solution) => solution.join()).sort(), text).toEqual(plain.sort());
    }
  });

  test("at every node of a search what is left is supported", () => {
    for (const { text, board } of boards) expect(unsupported(board, 60), text).toEqual([]);
  });

  test("the example's filling obeys, and the other breaks only this", () => {
    const { puzzle: text, obeys, breaks } = cases.get(kind.name)!.example;
    const board = compile(puzzleOf(text));
    const digitsIn = (filling: string): number[] => {
      const lines = filling.trim().split("\n");
      return lines
        .flatMap((line) => (/\s/.test(line.trim()) ? line.trim().split(/\s+/) : [...line.trim()]))
        .map(Number);
    };
    const broken = (filling: string, which: (name: string) => boolean): boolean => {
      const digits = digitsIn(filling);
      expect(digits, text).toHaveLength(board.domains.length);
      return board.rules
        .filter((rule) => which(rule.kind.name))
        .flatMap(({ scopes }) => scopes.map((scope) => checkOfScope(scope, board.domains)))
        .some((check) => !check.holds(check.cells.map((cell) => digits[cell]!)));
    };
    expect(broken(obeys, () => true)).toBe(false);
    expect(broken(breaks, (name) => name === kind.name)).toBe(true);
    expect(broken(breaks, (name) => name !== kind.name)).toBe(false);
    for (const filling of [obeys, breaks]) {
      const digits = digitsIn(filling);
      for (const { cells, holds } of checksOf({ ...board, rules: [] }))
        expect(holds(cells.map((cell) => digits[cell]!)), text).toBe(true);
    }
  });

  test("digits may be renamed as it says", () => {
    if (kind.relabels === "none") return;
    for (const { text, board } of boards) {
      const digits = [...new Set(board.puzzle.grids.flatMap((grid) => grid.digits))].sort((a, b) => a - b);
      const alike = board.puzzle.grids.every((grid) => grid.digits.join() === digits.join());
      const isRun = digits.at(-1)! - digits[0]! === digits.length - 1;
      if (
        !alike ||
        !board.rules.every((rule) => rule.kind.relabels === "any" || (isRun && rule.kind.relabels === "mirror"))
      )
        continue;
      const mirrored = [...digits].reverse();
      const images = board.rules.some((rule) => rule.kind.relabels === "mirror")
        ? [mirrored]
        : [mirrored, randomFrom(1).shuffled(digits)];
      const checks = checksOf(board);
      for (const { solutions } of [solve({ ...board, givens: new Map() }, { limit: 30 })])
        for (const image of images)
          for (const solution of solutions) {
            const renamed = Array.from(solution, (digit) => image[digits.indexOf(digit)]!);
            expect(
              checks.every(({ cells, holds }) => holds(cells.map((cell) => renamed[cell]!))),
              text,
            ).toBe(true);
          }
    }
  });
});
