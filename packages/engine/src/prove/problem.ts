import { count, type Digits, digitsOf } from "../board/digits.ts";
import type { Claim, Relation, SpotFact } from "../deduce/step.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Scope } from "../rules/contract.ts";
import { countScopes } from "./counts.ts";
import type { Definition } from "./definition.ts";
import { type Numbered, numberedOf, type ReadAlong } from "./reading.ts";

/** Cells (by place in the problem) that hold no digit twice; `digits` where each of these stands once. */
export interface Group {
  readonly cells: readonly number[];
  readonly digits?: Digits;
}
export interface Small {
  readonly cells: readonly number[];
  readonly holds: (digits: readonly number[]) => boolean;
}
export interface Reading {
  readonly cells: readonly number[];
  readonly numbered: Numbered;
  /** Its cells lie in one group of at most ten digits, so that none is used twice. */
  readonly apart: boolean;
}

/** The premises of a claim, over the cells that it touches: everything that an assignment must obey. */
export interface Problem {
  readonly cells: readonly Cell[];
  readonly placeOf: ReadonlyMap<Cell, number>;
  readonly domains: Int32Array;
  readonly groups: readonly Group[];
  readonly smalls: readonly Small[];
  readonly readings: readonly Reading[];
  /** The plain scopes again, to check an assignment against. */
  readonly scopes: readonly Scope[];
}

const cellOf = (about: Definition, name: string): Cell => {
  const cell = about.cellOf.get(name);
  if (cell === undefined) throw new Error(`a claim names ${name}, which is no cell`);
  return cell;
};

export const cellsOf = (about: Definition, names: readonly string[]): Cell[] => names.map((name) => cellOf(about, name));

/** A relation as a scope; denied, it is what its opposite demands. */
export const relationScope = (about: Definition, relation: Relation, denied = false): Scope => {
  if ("sum" in relation) {
    const add = (sum: number | string, digit: number): number => (sum as number) + digit;
    return { cells: cellsOf(about, relation.sum), start: 0, next: add, ok: (sum) => (sum === relation.is) !== denied };
  }
  const holds = (x: number, y: number): boolean => {
    if ("same" in relation) return x === y;
    if ("less" in relation) return x < y;
    return (x % 2 === y % 2) === (relation.is === "same");
  };
  const cells = "same" in relation ? relation.same : "less" in relation ? relation.less : relation.parity;
  return { cells: cellsOf(about, cells), holds: ([x, y]) => holds(x!, y!) !== denied };
};

const spotScope = (about: Definition, { digit, cells }: SpotFact): Scope => ({
  cells: cellsOf(about, cells),
  start: 0,
  next: (found, other) => (other === digit ? 1 : (found as number)),
  ok: (found) => found === 1,
});

const houseOf = (about: Definition, id: string) => {
  const house = about.houses.get(id);
  if (!house) throw new Error(`a claim names ${id}, which is no house`);
  return house;
};
const ruleOf = (about: Definition, id: string) => {
  const rule = about.rules.get(id);
  if (!rule) throw new Error(`a claim names ${id}, which is no rule`);
  return rule;
};

const touchedCells = (claim: Claim, about: Definition): Cell[] => {
  const { because } = claim;
  const named = [
    ...Object.keys(because.facts),
    ...Object.keys(claim.places),
    ...Object.keys(claim.removes),
    ...[...because.spots, ...claim.spots].flatMap(({ cells }) => cells),
    ...[...because.relations, ...claim.relates].flatMap((relation) => relationNames(relation)),
  ];
  const cells = new Set(cellsOf(about, named));
  for (const id of because.houses) for (const cell of houseOf(about, id).cells) cells.add(cell);
  for (const id of because.rules) for (const cell of ruleOf(about, id).cells) cells.add(cell);
  return [...cells].sort((a, b) => a - b);
};

const relationNames = (relation: Relation): readonly string[] =>
  "sum" in relation ? relation.sum : "same" in relation ? relation.same : "less" in relation ? relation.less : relation.parity;

/** What a listed rule demands of the touched cells: a whole-grid rule only what lies among them. */
const scopesOfRule = (about: Definition, id: string, touched: ReadonlySet<Cell>): Scope[] => {
  const { scopes, wholeGrid } = ruleOf(about, id);
  if (!wholeGrid) return [...scopes];
  return scopes.flatMap((scope): Scope[] => {
    const inside = scope.cells.filter((cell) => touched.has(cell));
    if (inside.length === scope.cells.length) return [scope];
    return "different" in scope && inside.length > 1 ? [{ cells: inside, different: true }] : [];
  });
};

const union = (about: Definition, cells: readonly Cell[]): Digits => cells.reduce((all, cell) => all | about.domains[cell]!, 0) as Digits;

/** Sets a claim's premises up as a problem over the cells that it touches. */
export const problemOf = (claim: Claim, about: Definition, denied: readonly Scope[] = []): Problem => {
  const cells = touchedCells(claim, about);
  const touched = new Set(cells);
  const placeOf = new Map(cells.map((cell, place) => [cell, place]));
  const places = (list: readonly Cell[]): number[] => list.map((cell) => placeOf.get(cell)!);
  const domains = Int32Array.from(cells, (cell) => about.domains[cell]!);
  for (const [name, digits] of Object.entries(claim.because.facts)) domains[placeOf.get(cellOf(about, name))!]! &= digitsOf(digits);
  const houses: Scope[] = claim.because.houses.map((id) => {
    const house = houseOf(about, id);
    return { cells: house.cells, different: true, ...(house.complete ? { digits: house.digits } : {}) };
  });
  const scopes: Scope[] = [
    ...houses,
    ...claim.because.rules.flatMap((id) => scopesOfRule(about, id, touched)),
    ...claim.because.spots.map((spot) => spotScope(about, spot)),
    ...claim.because.relations.map((relation) => relationScope(about, relation)),
    ...denied,
  ];
  const groups: Group[] = [];
  const smalls: Small[] = [];
  const readings: { cells: number[]; scope: ReadAlong }[] = [];
  for (const scope of scopes) {
    if ("different" in scope) {
      const digits = scope.digits ?? union(about, scope.cells);
      groups.push({ cells: places(scope.cells), ...(count(digits) === scope.cells.length ? { digits } : {}) });
    } else if ("holds" in scope) smalls.push({ cells: places(scope.cells), holds: scope.holds });
    else readings.push({ cells: places(scope.cells), scope });
  }
  for (const scope of countScopes(claim.because, about)) readings.push({ cells: places(scope.cells), scope });
  const apart = (list: readonly number[]): boolean =>
    groups.some((group) => list.every((place) => group.cells.includes(place))) && count(union(about, list.map((place) => cells[place]!))) <= 10;
  return {
    cells,
    placeOf,
    domains,
    groups,
    smalls,
    readings: readings.map(({ cells: list, scope }) => ({ cells: list, numbered: numberedOf(scope), apart: apart(list) })),
    scopes,
  };
};
