import { compile } from "../src/board/compile.ts";
import { listOf } from "../src/board/digits.ts";
import type { Puzzle } from "../src/puzzle/puzzle.ts";
import type { Kind } from "../src/rules/contract.ts";
import { solve } from "../src/search/solve.ts";
import { filledOf, filling } from "./filled-grid.ts";
import type { DrawnBoard, KindCases } from "./kind-cases.ts";
import { puzzleOf } from "./puzzles.ts";
import { type Random, randomFrom } from "./random.ts";

export type Wanted = "one" | "several" | "none";
const wanted: readonly Wanted[] = ["one", "several", "none"];

export interface RandomBoard {
  /** The whole file, to replay it. */
  readonly text: string;
  readonly puzzle: Puzzle;
}

/** Solutions of a board that is said to have several: few enough to list. */
const most = 60;
const range = (size: number): number[] => Array.from({ length: size }, (_, k) => k);

const textOf = ({ grid, rules }: DrawnBoard): string =>
  [
    "puzzle: 1\ntitle: Drawn\nsetter: { name: Nobody, permission: own }",
    `grids:\n  - { id: drawn, ${grid} }`,
    "rules:",
    ...rules.map((rule) => `  - ${rule}`),
    "",
  ].join("\n");

/** The file with these givens beside those it has. */
const withGivens = (text: string, puzzle: Puzzle, givens: ReadonlyMap<number, number>): string => {
  const list = [...puzzle.givens, ...givens].map(([cell, digit]) => `${puzzle.canvas.names[cell]}: ${digit}`);
  const bare = text.replace(/^givens:.*\n/m, "");
  return `${bare}givens: { cells: { ${list.join(", ")} } }\n`;
};

const soundPuzzle = (text: string): Puzzle | undefined => {
  try {
    return puzzleOf(text);
  } catch (error) {
    if (String(error).includes("not a sound puzzle")) return undefined;
    throw error;
  }
};

interface Base extends RandomBoard {
  /** A filling that obeys it, by `Cell`. */
  readonly obeys: ArrayLike<number>;
}

/** A board of one or two instances that a filled grid obeys. */
const fromChance = (kind: Kind, { random: draw }: KindCases, random: Random): Base | undefined => {
  for (const size of random.shuffled([4, 4, 6]))
    for (let trial = 0; trial < 6; trial++) {
      const obeys = filling(random, size);
      const times = kind.wholeGrid ? 1 : 1 + random.below(2);
      const bodies = range(times).flatMap(() => {
        const body = draw(random, filledOf(size, obeys));
        return body === undefined ? [] : [`${kind.name}: ${JSON.stringify(body)}`];
      });
      const text = textOf({ grid: `size: ${size}`, rules: bodies });
      const puzzle = bodies.length > 0 ? soundPuzzle(text) : undefined;
      if (puzzle) return { text, puzzle, obeys };
    }
  return undefined;
};

/** Grids on which a rule of the whole grid is tried; the largest only where no other will do. */
const forms = ["size: 4", "size: 5, regions: none", "size: 5, regions: none, digits: 1 3 5 7 9", "size: 6"];
const largeForms = ["size: 9", "size: 9, regions: none"];

/** Searches are given up after so many nodes. */
const nodes = 400;

/** A filling of the board near a few digits set at random, if one is found soon. */
const filledNear = (puzzle: Puzzle, random: Random): ArrayLike<number> | undefined => {
  const board = compile(puzzle);
  for (const many of [4, 3, 2, 0]) {
    const cells = random.shuffled(range(board.domains.length)).slice(0, many);
    const givens = new Map(cells.map((cell) => [cell, random.pick(listOf(board.domains[cell]!))]));
    const { solutions } = solve({ ...board, givens: new Map([...givens, ...board.givens]) }, { limit: 20, nodes });
    if (solutions.length > 0) return random.pick(solutions);
  }
  return undefined;
};

const searched = (drawn: DrawnBoard, random: Random): Base | undefined => {
  const text = textOf(drawn);
  const puzzle = soundPuzzle(text);
  const obeys = puzzle && filledNear(puzzle, random);
  return puzzle && obeys ? { text, puzzle, obeys } : undefined;
};

/** A board of the kind that search finds a filling of. */
const fromSearch = (kind: Kind, cases: KindCases, random: Random): Base | undefined => {
  const own =
    cases.board && (!kind.wholeGrid || random.below(2) === 0) ? searched(cases.board(random), random) : undefined;
  if (own || !kind.wholeGrid) return own;
  for (const grid of [...random.shuffled(forms), ...random.shuffled(largeForms)]) {
    const base = searched({ grid, rules: [kind.name] }, random);
    if (base) return base;
  }
  return undefined;
};

const drawnBase = (kind: Kind, cases: KindCases, random: Random): Base => {
  const ways = [fromChance, fromSearch];
  for (const way of random.below(2) === 0 ? ways : ways.toReversed()) {
    const base = way(kind, cases, random);
    if (base) return base;
  }
  throw new Error(`no board with ${kind.name} was found`);
};

type Givens = ReadonlyMap<number, number>;

/** How many solutions there are with these givens more, up to a limit of 1 to `most` + 1. */
const counterOf = (puzzle: Puzzle): ((givens: Givens, limit: number) => number) => {
  const board = compile(puzzle);
  // A larger grid has too many to list.
  const { solutions, exhausted } = solve(board, { limit: board.domains.length <= 25 ? 500 : 0 });
  return (givens, limit) => {
    if (exhausted)
      return solutions.filter((solution) => [...givens].every(([cell, digit]) => solution[cell] === digit)).length;
    return solve({ ...board, givens: new Map([...board.givens, ...givens]) }, { limit }).solutions.length;
  };
};

/**
 * Givens are added, from the filling, until no more than `highest` solutions are left, and never fewer than `lowest`;
 * undefined where there are too few from the first. A grid of some size gets a third of its cells at once.
 */
const leading = (base: Base, lowest: number, highest: number, random: Random): Map<number, number> | undefined => {
  const count = counterOf(base.puzzle);
  const cells = random.shuffled(range(base.obeys.length)).filter((cell) => !base.puzzle.givens.has(cell));
  const given = (some: readonly number[]) => new Map(some.map((cell) => [cell, base.obeys[cell]!]));
  const third = cells.length > 30 ? cells.slice(0, cells.length / 3) : [];
  let kept = count(given(third), lowest) < lowest ? [] : third;
  let left = count(given(kept), highest + 1);
  if (left < lowest) return undefined;
  for (const cell of cells) {
    if (left <= highest) break;
    const solutions = count(given([...kept, cell]), highest + 1);
    if (solutions >= lowest) [kept, left] = [[...kept, cell], solutions];
  }
  return given(kept);
};

/** One of the givens made another digit, or another digit given, so that nothing is left. */
const spoilt = (base: Base, givens: Givens, random: Random): Givens => {
  const count = counterOf(base.puzzle);
  const { sees } = compile(base.puzzle);
  const all = new Map([...base.puzzle.givens, ...givens]);
  const clashes = (cell: number, digit: number) => sees[cell]!.some((other) => all.get(other) === digit);
  const digits = [...new Set(Array.from(base.obeys))];
  const cells = [...new Set([...random.shuffled([...givens.keys()]), ...random.shuffled(range(base.obeys.length))])];
  for (const cell of cells)
    for (const digit of random.shuffled(digits)) {
      const other = new Map([...givens, [cell, digit]]);
      if (clashes(cell, digit) || base.puzzle.givens.has(cell)) continue;
      if (count(other, 1) === 0 && soundPuzzle(withGivens(base.text, base.puzzle, other))) return other;
    }
  throw new Error(`no given spoils\n${base.text}`);
};

const givensFor = (base: Base, want: Wanted, random: Random): Givens | undefined => {
  if (want === "several") return leading(base, 2, 2 + random.below(most - 1), random);
  const fair = leading(base, 1, 1, random)!;
  return want === "one" ? fair : spoilt(base, fair, random);
};

const drawn = (kind: Kind, cases: KindCases, want: Wanted, random: Random): RandomBoard | undefined => {
  const base = drawnBase(kind, cases, random);
  const givens = givensFor(base, want, random);
  const text = givens && withGivens(base.text, base.puzzle, givens);
  return text === undefined ? undefined : { text, puzzle: puzzleOf(text) };
};

/** Boards of one kind drawn from the seed, no two alike, in turn with one, several and no solutions. */
export const randomBoards = (kind: Kind, cases: KindCases, count: number, seed: number): RandomBoard[] => {
  const random = randomFrom(seed);
  const boards = new Map<string, RandomBoard>();
  for (let tries = 0; boards.size < count && tries < 10 * count; tries++) {
    const board = drawn(kind, cases, wanted[boards.size % wanted.length]!, random);
    if (board) boards.set(board.text, board);
  }
  return [...boards.values()];
};
