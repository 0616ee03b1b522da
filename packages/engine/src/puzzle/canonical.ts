import type { Body } from "../rules/contract.ts";
import { fnv1a } from "./fnv1a.ts";
import type { Draft, Grid } from "./puzzle.ts";
import { mayTurn, relabelled, turned, turns } from "./turn.ts";

type Digit = number;
/** By `Cell`. */
type Solved = ArrayLike<Digit> | undefined;

const isPlace = (value: unknown): value is { row: number; column: number } =>
  typeof value === "object" && value !== null && "row" in value && "column" in value;

const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/**
 * What a body says, whatever the order in which its cells are listed. Where order means something (a bulb, the greater
 * of two) the solution tells it apart, which stands beside it.
 */
const said = (value: unknown, gridName: (id: string) => string): unknown => {
  if (Array.isArray(value)) {
    const parts = value.map((part) => said(part, gridName));
    const isNumbers = parts.every((part) => typeof part === "number");
    return isNumbers ? parts : parts.map((part) => JSON.stringify(part)).sort(byText);
  }
  if (isPlace(value)) return `${value.row},${value.column}`;
  if (typeof value === "string") return gridName(value);
  if (typeof value !== "object" || value === null) return value;
  return Object.entries(value)
    .filter(([, part]) => part !== undefined)
    .sort(([a], [b]) => byText(a, b))
    .map(([key, part]) => [key, said(part, gridName)]);
};

/** Where there is one grid, naming it says nothing. */
const bodySaid = (all: Body, grids: readonly Grid[], gridName: (id: string) => string): unknown => {
  const { tint: _, note: __, ...body } = all;
  const spare = grids.length === 1 ? ["grid", "grids"] : [];
  return said(Object.fromEntries(Object.entries(body).filter(([key]) => !spare.includes(key))), gridName);
};

/** Regions by the order in which they are met. */
const regionsSaid = ({ regions }: Grid): string => {
  const met = new Map<string, number>();
  return (regions ?? []).map((letter) => met.get(letter) ?? met.set(letter, met.size).size - 1).join();
};

const gridOrder = (a: Grid, b: Grid): number =>
  a.row - b.row || a.column - b.column || a.size - b.size || byText(a.digits.join(), b.digits.join());

/** Digits by name; with which of them a class may change places. */
type Names = (digit: Digit) => Digit;
const asTheyAre: Names = (digit) => digit;

/** Digits that the same grids have may be renamed among themselves: in the order in which they are met. */
const metNames = (puzzle: Draft, solved: Solved): Names => {
  const classes = new Map<string, Digit[]>();
  const all = [...new Set(puzzle.grids.flatMap(({ digits }) => digits))].sort((a, b) => a - b);
  const classOf = (digit: Digit): string => puzzle.grids.map(({ digits }) => digits.includes(digit)).join();
  for (const digit of all) classes.set(classOf(digit), [...(classes.get(classOf(digit)) ?? []), digit]);
  const names = new Map<Digit, Digit>();
  const givens = [...puzzle.givens].sort(([a], [b]) => a - b).map(([, digit]) => digit);
  for (const digit of [...givens, ...(solved ? Array.from(solved) : []), ...all])
    if (!names.has(digit)) names.set(digit, classes.get(classOf(digit))!.shift()!);
  return (digit) => names.get(digit)!;
};

/** The ways to name the digits under which the rules say the same. */
const namings = (puzzle: Draft, solved: Solved): Names[] => {
  const names = metNames(puzzle, solved);
  if (relabelled(puzzle, (digit) => (digit === 31 ? 0 : digit + 1))) return [names];
  const digits = puzzle.grids[0]?.digits ?? [];
  const mirrored: Names = (digit) => digits[0]! + digits.at(-1)! - digit;
  return relabelled(puzzle, mirrored) ? [asTheyAre, mirrored] : [asTheyAre];
};

const written = (puzzle: Draft, solved: Solved, names: Names): string => {
  const grids = [...puzzle.grids].sort(gridOrder);
  const gridName = (text: string): string => {
    const at = grids.findIndex(({ id }) => id === text);
    return at < 0 ? text : `grid ${at}`;
  };
  const rules = puzzle.rules
    .map(({ kind, body }) => JSON.stringify([kind, bodySaid(body, grids, gridName)]))
    .sort(byText);
  return JSON.stringify({
    grids: grids.map((grid) => [grid.row, grid.column, grid.size, grid.digits, regionsSaid(grid)]),
    givens: [...puzzle.givens].sort(([a], [b]) => a - b).map(([cell, digit]) => [cell, names(digit)]),
    solved: solved ? Array.from(solved, names) : [],
    rules,
  });
};

/**
 * One short name for a puzzle and all that it becomes by turning, by mirroring and, where its rules stand it, by
 * renaming its digits. With its only solution (by `Cell`) it holds for rules whose order matters too; titles, wording,
 * colours and the order of cells in the file do not count.
 */
export const canonicalName = (puzzle: Draft, solution?: ArrayLike<Digit>): string => {
  const filled = solution && new Map(Array.from(solution, (digit, cell) => [cell, digit]));
  const ways = turns
    .filter((turn) => mayTurn(puzzle, turn))
    .flatMap((turn) => {
      const laid = turned(puzzle, turn);
      const solved = filled && [...turned({ ...puzzle, givens: filled }, turn).givens.values()];
      return namings(laid, solved).map((names) => written(laid, solved, names));
    });
  return fnv1a(ways.sort(byText)[0]!);
};
