import { describe, expect, test } from "vitest";
import { claim } from "../../test-kit/claim.ts";
import { type Check, checkOfScope, fillings } from "../../test-kit/enumerate.ts";
import { cases } from "../../test-kit/kind-files.ts";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { type Random, randomFrom } from "../../test-kit/random.ts";
import type { Board, House, RuleInstance } from "../board/board.ts";
import { compile } from "../board/compile.ts";
import { both, count, type Digits, digitsOf, has, listOf } from "../board/digits.ts";
import type { Because, Claim, Relation, SpotFact } from "../deduce/step.ts";
import { cellNamed } from "../puzzle/canvas.ts";
import { kinds } from "../rules/registry.ts";
import { definitionOf } from "./definition.ts";
import { prove } from "./prove.ts";

/** The naive twin: every assignment of the touched cells, one by one, judged word for word as STEPS.md puts it. */
interface Judged {
  readonly verdict: "proved" | "refused" | "unknown";
  readonly assignments: number;
}

type Values = readonly number[];
const mostAssignments = 2_000;

const cellOf = (board: Board, name: string): number => cellNamed(board.canvas, name)!;
const cellsOf = (board: Board, names: readonly string[]): number[] => names.map((name) => cellOf(board, name));

const namesOf = (relation: Relation): readonly string[] =>
  "same" in relation
    ? relation.same
    : "less" in relation
      ? relation.less
      : "sum" in relation
        ? relation.sum
        : relation.parity;

const relationHolds = (relation: Relation, digits: Values): boolean => {
  if ("same" in relation) return digits[0] === digits[1];
  if ("less" in relation) return digits[0]! < digits[1]!;
  const sum = digits.reduce((total, digit) => total + digit, 0);
  return "sum" in relation ? sum === relation.is : (sum % 2 === 0) === (relation.is === "same");
};

const relationCheck = (board: Board, relation: Relation): Check => ({
  cells: cellsOf(board, namesOf(relation)),
  holds: (digits) => relationHolds(relation, digits),
});
const spotCheck = (board: Board, { digit, cells }: SpotFact): Check => ({
  cells: cellsOf(board, cells),
  holds: (digits) => digits.includes(digit),
});

const houseCheck = ({ cells, digits, complete }: House): Check => ({
  cells,
  differ: true,
  holds: (all) =>
    new Set(all).size === all.length && (!complete || listOf(digits).every((digit) => all.includes(digit))),
});

/** A whole-grid rule binds the touched cells only: what it says of others is left out. */
const ruleChecks = (rule: RuleInstance, board: Board, touched: ReadonlySet<number>): Check[] =>
  rule.scopes.flatMap((scope) => {
    const cells = scope.cells.filter((cell) => touched.has(cell));
    if (cells.length === scope.cells.length) return [checkOfScope(scope, board.domains)];
    if (!("different" in scope) || cells.length < 2) return [];
    return [{ cells, differ: true, holds: (all: Values) => new Set(all).size === all.length }];
  });

const touchedBy = ({ places, removes, spots, relates, because }: Claim, board: Board): Set<number> => {
  const rules = because.rules.map((id) => board.rule(id)!).filter((rule) => !rule.wholeGrid);
  return new Set([
    ...rules.flatMap((rule) => [...rule.cells, ...rule.scopes.flatMap(({ cells }) => cells)]),
    ...because.houses.flatMap((id) => board.house(id)!.cells),
    ...cellsOf(board, [...Object.keys(places), ...Object.keys(removes), ...Object.keys(because.facts)]),
    ...[...spots, ...because.spots].flatMap(({ cells }) => cellsOf(board, cells)),
    ...[...relates, ...because.relations].flatMap((relation) => cellsOf(board, namesOf(relation))),
  ]);
};

const checksOf = ({ because }: Claim, board: Board, touched: ReadonlySet<number>): Check[] => [
  ...because.houses.map((id) => houseCheck(board.house(id)!)),
  ...because.rules.flatMap((id) => ruleChecks(board.rule(id)!, board, touched)),
  ...because.spots.map((spot) => spotCheck(board, spot)),
  ...because.relations.map((relation) => relationCheck(board, relation)),
];

const isFulfilled = ({ places, removes, spots, relates }: Claim, board: Board, values: Values): boolean =>
  Object.entries(places).every(([name, digit]) => values[cellOf(board, name)] === digit) &&
  Object.entries(removes).every(([name, digits]) => !digits.includes(values[cellOf(board, name)]!)) &&
  [...spots.map((spot) => spotCheck(board, spot)), ...relates.map((relation) => relationCheck(board, relation))].every(
    ({ cells, holds }) => holds(cells.map((cell) => values[cell]!)),
  );

/** The assignments that obey the reasons, or undefined where they are too many. */
const assignmentsOf = (of: Claim, board: Board): Values[] | undefined => {
  const touched = touchedBy(of, board);
  const domains = [...board.domains];
  for (const [name, digits] of Object.entries(of.because.facts)) {
    const cell = cellOf(board, name);
    domains[cell] = both(domains[cell]!, digitsOf(digits));
  }
  const all: Values[] = [];
  for (const values of fillings([...touched], domains, checksOf(of, board, touched))) {
    all.push(values);
    if (all.length > mostAssignments) return undefined;
  }
  return all;
};

const judgedBy = (of: Claim, board: Board): Judged => {
  const all = assignmentsOf(of, board);
  if (!all) return { verdict: "unknown", assignments: mostAssignments };
  const holds = of.contradiction
    ? all.length === 0
    : all.length > 0 && all.every((values) => isFulfilled(of, board, values));
  return { verdict: holds ? "proved" : "refused", assignments: all.length };
};

const some = <T>(random: Random, list: readonly T[], most: number): T[] =>
  random.shuffled(list).slice(0, random.below(most + 1));

const randomRelation = (
  random: Random,
  names: readonly string[],
  values: Values | undefined,
  board: Board,
): Relation | undefined => {
  const [a, b, c] = random.shuffled(names) as [string, string, string];
  if (b === undefined) return undefined;
  const digit = (name: string): number => values?.[cellOf(board, name)] ?? 1 + random.below(4);
  const [x, y] = [digit(a), digit(b)];
  const sum = c === undefined || random.below(2) === 0 ? [a, b] : [a, b, c];
  const is = sum.reduce((total, name) => total + digit(name), 0);
  const parity = (x + y) % 2 === 0 ? "same" : "different";
  const choices: Relation[] = [
    { sum, is },
    { parity: [a, b], is: parity },
  ];
  return random.pick<Relation>([...choices, x === y ? { same: [a, b] } : { less: x < y ? [a, b] : [b, a] }]);
};

const randomSpot = (random: Random, board: Board, values: Values | undefined): SpotFact | undefined => {
  const house = random.pick([...board.houses, ...board.rules.filter(({ cells }) => cells.length > 1)]);
  if (!house) return undefined;
  const cells = random.shuffled(house.cells).slice(0, 1 + random.below(house.cells.length));
  const digit = values && values[cells[0]!]! >= 0 ? values[cells[0]!]! : random.pick(listOf(board.domains[cells[0]!]!));
  return { digit, cells: cells.map((cell) => board.canvas.names[cell]!), house: house.id };
};

/** Reasons at random: mostly such as a filling of the whole board obeys. */
const randomBecause = (random: Random, board: Board, filling: Values | undefined): Partial<Because> => {
  const { names } = board.canvas;
  const facts: Record<string, number[]> = {};
  for (const cell of some(
    random,
    names.map((_, k) => k),
    4,
  )) {
    const digits = some(random, listOf(board.domains[cell]!), 3);
    const own =
      filling && random.below(8) > 0
        ? [filling[cell]!]
        : digits.length > 0
          ? []
          : [random.pick(listOf(board.domains[cell]!))];
    facts[names[cell]!] = [...new Set([...own, ...digits])];
  }
  const houses = some(
    random,
    board.houses.map(({ id }) => id),
    3,
  );
  const rules = some(
    random,
    board.rules.map(({ id }) => id),
    3,
  );
  const spot = random.below(4) === 0 ? randomSpot(random, board, filling) : undefined;
  const relation = random.below(4) === 0 ? randomRelation(random, names, filling, board) : undefined;
  const plus = some(random, houses, 3);
  const minus = some(
    random,
    [...houses, ...rules].filter((id) => !plus.includes(id)),
    3,
  );
  return {
    facts,
    houses,
    rules,
    spots: spot ? [spot] : [],
    relations: relation ? [relation] : [],
    ...(random.below(2) === 0 ? { counts: [{ plus, minus }] } : {}),
  };
};

/** Something concluded at random about touched cells: often what holds in every assignment, sometimes a little more. */
const randomConclusion = (random: Random, board: Board, all: readonly Values[]): Partial<Claim> => {
  const { names } = board.canvas;
  const first = all[0] ?? names.map(() => -1);
  const touched = names.map((_, cell) => cell).filter((cell) => first[cell]! >= 0 || random.below(20) === 0);
  const cell = touched.length > 0 ? random.pick(touched) : 0;
  const left = digitsOf(all.map((values) => values[cell]!).filter((digit) => digit >= 0));
  const gone = listOf((board.domains[cell]! & ~left) as Digits);
  const touchedNames = touched.map((other) => names[other]!);
  switch (random.below(5)) {
    case 0:
      return { places: { [names[cell]!]: random.pick(listOf(count(left) > 0 ? left : board.domains[cell]!)) } };
    case 1: {
      const spot = randomSpot(random, board, first);
      return spot ? { spots: [spot] } : {};
    }
    case 2: {
      const relation = randomRelation(random, touchedNames, first, board);
      return relation ? { relates: [relation] } : {};
    }
    case 3:
      return { removes: { [names[cell]!]: [...gone, ...some(random, listOf(left), 1)] } };
    default:
      return { removes: { [names[cell]!]: gone } };
  }
};

const isSaying = ({ places, removes, spots, relates }: Claim): boolean =>
  Object.keys(places).length + spots.length + relates.length + Object.values(removes).flat().length > 0;

const randomClaim = (random: Random, board: Board, filling: Values | undefined): Claim | undefined => {
  const because = randomBecause(random, board, filling);
  if (random.below(12) === 0) return claim({ contradiction: true }, because);
  const all = assignmentsOf(claim({}, because), board);
  const made = all && claim(randomConclusion(random, board, all), because);
  return made && isSaying(made) ? made : undefined;
};

const fillingOf = (board: Board, random: Random): Values | undefined => {
  const whole = claim({}, { houses: board.houses.map(({ id }) => id), rules: board.rules.map(({ id }) => id) });
  const all = assignmentsOf(whole, board);
  return all && all.length > 0 ? random.pick(all) : undefined;
};

/** What goes wrong with one claim, as text; nothing where prover and enumeration agree. */
const disagreement = (of: Claim, board: Board): { fault?: string; verdict: string } => {
  const verdict = prove(of, definitionOf(board));
  const judged = judgedBy(of, board);
  if (judged.verdict === "unknown") return { verdict: "unknown" };
  if (verdict.verdict !== judged.verdict)
    return {
      verdict: judged.verdict,
      fault: `${JSON.stringify(verdict)}, not ${judged.verdict}: ${JSON.stringify(of)}`,
    };
  if (verdict.verdict !== "refused") return { verdict: "proved" };
  const { counterexample } = verdict;
  if (!counterexample)
    return judged.assignments === 0
      ? { verdict: "none" }
      : { verdict: "none", fault: `no counterexample: ${JSON.stringify(of)}` };
  const touched = touchedBy(of, board);
  const values = board.canvas.names.map((name) => counterexample[name] ?? -1);
  const isWhole = values.every((digit, cell) => digit >= 0 === touched.has(cell));
  const obeys =
    isWhole &&
    checksOf(of, board, touched).every(({ cells, holds }) => holds(cells.map((cell) => values[cell]!))) &&
    [...touched].every((cell) => has(board.domains[cell]!, values[cell]!)) &&
    Object.entries(of.because.facts).every(([name, digits]) => digits.includes(counterexample[name]!));
  const breaks = of.contradiction || !isFulfilled(of, board, values);
  return obeys && breaks
    ? { verdict: "refused" }
    : { verdict: "refused", fault: `a wrong counterexample: ${JSON.stringify(of)} ${JSON.stringify(counterexample)}` };
};

const perBoard = 5;
/** Boards with more cells have more assignments than can be looked at one by one. */
const mostCells = 16;

describe("the prover says of random claims what enumeration says", () => {
  const tally: Record<string, number> = {};

  test.each(kinds.map(({ name }) => name).filter((name) => cases.has(name)))("%s", (name) => {
    for (const [index, text] of cases.get(name)!.boards.entries()) {
      const board = compile(puzzleOf(text));
      if (board.canvas.names.length > mostCells) continue;
      const random = randomFrom(1000 + index);
      const filling = fillingOf(board, random);
      for (let k = 0; k < perBoard; k++) {
        const made = randomClaim(random, board, filling);
        if (!made) continue;
        const { fault, verdict } = disagreement(made, board);
        tally[verdict] = (tally[verdict] ?? 0) + 1;
        expect(fault, text).toBeUndefined();
      }
    }
  });

  test("in hundreds of cases of each verdict", () => {
    expect(tally.proved).toBeGreaterThan(300);
    expect(tally.refused).toBeGreaterThan(300);
    expect(tally.none).toBeGreaterThan(30);
  });
});
