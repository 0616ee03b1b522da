import type { Canvas, Cell } from "../puzzle/canvas.ts";
import type { Grid, Puzzle } from "../puzzle/puzzle.ts";
import { cellsAt, digitsIn, domainsOf } from "../rules/cells.ts";
import type { Kind, Scope } from "../rules/contract.ts";
import { kinds as allKinds, kindNamed } from "../rules/registry.ts";
import { resolved, settingOf } from "../rules/setting.ts";
import type { Board, Group, House, RuleInstance } from "./board.ts";
import { count, digitsOf } from "./digits.ts";

const range = (size: number): number[] => Array.from({ length: size }, (_, k) => k);

/** The rows, columns and regions of one grid. */
const housesOf = (grid: Grid, index: number, canvas: Canvas): House[] => {
  const cell = (row: number, column: number): Cell =>
    cellsAt({ canvas }, [{ row: grid.row + row, column: grid.column + column }])[0]!;
  const digits = digitsOf(grid.digits);
  const house = (shape: House["shape"], label: string, cells: Cell[]): House => ({
    id: `${grid.id}/${shape}/${label}`,
    cells: cells.sort((a, b) => a - b),
    digits,
    complete: true,
    shape,
    grid: index,
    label,
  });
  const lines = range(grid.size);
  const rows = lines.map((row) =>
    house(
      "row",
      `${row + 1}`,
      lines.map((column) => cell(row, column)),
    ),
  );
  const columns = lines.map((column) =>
    house(
      "column",
      `${column + 1}`,
      lines.map((row) => cell(row, column)),
    ),
  );
  const regions = [...new Set(grid.regions ?? [])].map((letter) =>
    house(
      "region",
      letter,
      grid.regions!.flatMap((other, k) => (other === letter ? [cell(Math.floor(k / grid.size), k % grid.size)] : [])),
    ),
  );
  return [...regions, ...rows, ...columns];
};

const instancesOf = (puzzle: Puzzle, kinds: readonly Kind[]): RuleInstance[] => {
  const setting = settingOf(puzzle, kinds, { trusting: true });
  return puzzle.rules.map((entry) => {
    const kind = kindNamed(entry.kind, kinds);
    const instance = kind && resolved(entry, kind, setting);
    if (!kind || !instance || "faults" in instance) throw new Error(`${entry.id} was accepted but can't be resolved`);
    return {
      id: entry.id,
      kind,
      instance,
      cells: instance.cells,
      scopes: kind.scopes(instance),
      wholeGrid: kind.wholeGrid ?? false,
      leftOut: kind.leftOut?.(instance) ?? false,
    };
  });
};

type DifferentScope = Extract<Scope, { different: true }>;

const differentOf = (rules: readonly RuleInstance[]): { rule: string; scope: DifferentScope }[] =>
  rules.flatMap((rule) => rule.scopes.flatMap((scope) => ("different" in scope ? [{ rule: rule.id, scope }] : [])));

const sightOf = (cells: number, together: readonly { readonly cells: readonly Cell[] }[]): Cell[][] => {
  const seen = Array.from({ length: cells }, () => new Set<Cell>());
  for (const { cells: group } of together)
    for (const cell of group) for (const other of group) if (other !== cell) seen[cell]!.add(other);
  return seen.map((others) => [...others].sort((a, b) => a - b));
};

/** Makes an accepted puzzle ready for search, proof and reasoning. */
export const compile = (puzzle: Puzzle, kinds: readonly Kind[] = allKinds): Board => {
  const { canvas } = puzzle;
  const domains = domainsOf(puzzle);
  const rules = instancesOf(puzzle, kinds);
  const different = differentOf(rules);
  const madeByRules = different.flatMap(({ rule, scope }): House[] => {
    if (!scope.house) return [];
    const digits = scope.digits ?? digitsIn({ domains }, scope.cells);
    const complete = count(digits) === scope.cells.length;
    const grid = puzzle.grids.findIndex(({ id }) => scope.house!.startsWith(`${id}/`));
    const label = scope.house.split("/").at(-1)!;
    const cells = [...scope.cells].sort((a, b) => a - b);
    return [{ id: scope.house, cells, digits, complete, shape: "other", label, rule, ...(grid < 0 ? {} : { grid }) }];
  });
  const houses = [...puzzle.grids.flatMap((grid, index) => housesOf(grid, index, canvas)), ...madeByRules];
  const groups: Group[] = different.flatMap(({ rule, scope }) => (scope.house ? [] : [{ rule, cells: scope.cells }]));
  const houseById = new Map(houses.map((house) => [house.id, house]));
  const ruleById = new Map(rules.map((rule) => [rule.id, rule]));
  return {
    puzzle,
    canvas,
    domains,
    givens: puzzle.givens,
    houses,
    groups,
    rules,
    terms: rules.flatMap(({ kind, instance }) => kind.terms(instance)),
    sees: sightOf(canvas.names.length, [...houses, ...groups]),
    house: (id) => houseById.get(id),
    rule: (id) => ruleById.get(id),
  };
};
