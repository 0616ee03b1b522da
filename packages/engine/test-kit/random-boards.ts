import { compile } from "../src/board/compile.ts";
import type { Puzzle } from "../src/puzzle/puzzle.ts";
import type { Kind } from "../src/rules/contract.ts";
import { solve } from "../src/search/solve.ts";
import type { Filled, KindCases } from "./kind-cases.ts";
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
const boxOf = (size: number): readonly [number, number] => (size === 4 ? [2, 2] : [2, 3]);
const range = (size: number): number[] => Array.from({ length: size }, (_, k) => k);

/** A filled grid: rows shifted so that boxes hold each digit once, then shuffled within what keeps that. */
const filling = (random: Random, size: number): number[] => {
  const [rows, columns] = boxOf(size);
  const within = (bands: number, lines: number): number[] =>
    random.shuffled(range(bands)).flatMap((band) => random.shuffled(range(lines)).map((line) => band * lines + line));
  const digits = random.shuffled(range(size).map((digit) => digit + 1));
  const [down, right] = [within(size / rows, rows), within(size / columns, columns)];
  return down.flatMap((row) =>
    right.map((column) => digits[(column + columns * (row % rows) + Math.floor(row / rows)) % size]!),
  );
};

const filledOf = (size: number, digits: ArrayLike<number>): Filled => ({
  size,
  digit: (row, column) => digits[(row - 1) * size + column - 1]!,
});

const head = (size: number): string =>
  `puzzle: 1\ntitle: Drawn\nsetter: { name: Nobody, permission: own }\ngrids:\n  - { id: drawn, size: ${size} }\n`;
const textOf = (size: number, kind: string, bodies: readonly unknown[]): string =>
  `${head(size)}rules:\n${bodies.map((body) => `  - ${kind}: ${JSON.stringify(body)}\n`).join("")}`;

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
  /** A filling that obeys it, by `Cell`; absent where it has none. */
  readonly obeys?: ArrayLike<number>;
}

/** Whole-grid rules that few fillings obey: one of the first solutions of the rule alone. */
const fillingOf = (kind: Kind, size: number, random: Random): ArrayLike<number> | undefined => {
  const puzzle = kind.wholeGrid && soundPuzzle(textOf(size, kind.name, [null]));
  return puzzle ? random.shuffled(solve(compile(puzzle), { limit: 50 }).solutions)[0] : undefined;
};

/** A board of one or two instances that a filled grid obeys. */
const fromChance = (kind: Kind, { random: draw }: KindCases, random: Random): Base | undefined => {
  const size = random.pick([4, 4, 6]);
  for (let trial = 0; trial < 12; trial++) {
    const obeys = trial < 6 ? filling(random, size) : fillingOf(kind, size, random);
    if (!obeys) continue;
    const times = kind.wholeGrid ? 1 : 1 + random.below(2);
    const bodies = range(times).flatMap(() => draw(random, filledOf(size, obeys)) ?? (kind.wholeGrid ? null : []));
    const text = textOf(size, kind.name, bodies);
    if (bodies.length === 0 || (kind.wholeGrid && draw(random, filledOf(size, obeys)) === undefined)) continue;
    const puzzle = soundPuzzle(text);
    if (puzzle) return { text, puzzle, obeys };
  }
  return undefined;
};

/** One of the kind's own boards, with a solution if a few tries find one that has. */
const fromCases = ({ boards }: KindCases, random: Random): Base => {
  for (let trial = 0; ; trial++) {
    const text = random.pick(boards);
    const puzzle = puzzleOf(text);
    const [obeys] = random.shuffled(solve(compile(puzzle), { limit: 50 }).solutions);
    if (obeys) return { text, puzzle, obeys };
    if (trial === 5) return { text, puzzle };
  }
};

type Givens = ReadonlyMap<number, number>;

/** How many solutions there are with these givens more, up to a limit of 1 to `most` + 1. */
const counterOf = (puzzle: Puzzle): ((givens: Givens, limit: number) => number) => {
  const board = compile(puzzle);
  const { solutions, exhausted } = solve(board, { limit: 500 });
  return (givens, limit) => {
    if (exhausted)
      return solutions.filter((solution) => [...givens].every(([cell, digit]) => solution[cell] === digit)).length;
    return solve({ ...board, givens: new Map([...board.givens, ...givens]) }, { limit }).solutions.length;
  };
};

/** Givens are added, from the filling, until as few solutions are left as wanted. */
const leading = (base: Base, enough: number, random: Random): Map<number, number> => {
  const count = counterOf(base.puzzle);
  const givens = new Map<number, number>();
  for (const cell of random.shuffled(range(base.obeys!.length))) {
    if (count(givens, enough + 1) <= enough) break;
    if (!base.puzzle.givens.has(cell)) givens.set(cell, base.obeys![cell]!);
  }
  return givens;
};

/** One of the givens made another digit, so that nothing is left. */
const spoilt = (base: Base, givens: Givens, random: Random): Givens => {
  const count = counterOf(base.puzzle);
  const digits = [...new Set(Array.from(base.obeys!))];
  for (const cell of random.shuffled([...givens.keys()]))
    for (const digit of random.shuffled(digits)) {
      const other = new Map([...givens, [cell, digit]]);
      if (count(other, 1) === 0 && soundPuzzle(withGivens(base.text, base.puzzle, other))) return other;
    }
  return givens;
};

const withChosenGivens = (base: Base, want: Wanted, random: Random): RandomBoard => {
  if (!base.obeys) return base;
  const fair = leading(base, want === "several" ? most : 1, random);
  const text = withGivens(base.text, base.puzzle, want === "none" ? spoilt(base, fair, random) : fair);
  const puzzle = soundPuzzle(text);
  return puzzle ? { text, puzzle } : base;
};

/** Boards of one kind drawn from the seed, in turn with one, several and no solutions as far as chance lets them. */
export const randomBoards = (kind: Kind, cases: KindCases, count: number, seed: number): RandomBoard[] => {
  const random = randomFrom(seed);
  return range(count).map((k) => {
    const base = fromChance(kind, cases, random) ?? fromCases(cases, random);
    return withChosenGivens(base, wanted[k % 3]!, random);
  });
};
