import { type Board, type Cell, compile, finished, judging } from "@solvewright/engine";
import { randomFrom } from "../../packages/engine/src/random.ts";
import { solve } from "../../packages/engine/src/search/solve.ts";
import type { Options } from "../options.ts";
import { empty, puzzleIn } from "../puzzles.ts";
import { inTurns, median, timed } from "../turns.ts";
import { isWanted, type Measure, type Row } from "./measure.ts";

const sizes = [4, 6, 9, 12, 16, 20, 25];
const mostGrids = 5;
/** Of the cells, so many are tried to be taken out of a filled grid. */
const share = 0.5;

/** Grids of 9x9, each sharing its first box with the last of the one before. */
const chain = (grids: number): Board => {
  const list = Array.from({ length: grids }, (_, k) => `{ id: g${k + 1}, size: 9, at: r${6 * k + 1}c${6 * k + 1} }`);
  const text = `puzzle: 1\ntitle: chain\nsetter: { name: us, permission: own }\ngrids: [${list.join(", ")}]\n`;
  return compile(puzzleIn(text, `${grids} grids`));
};

/** The board with givens of one of its fillings, fewer as long as they leave no other. */
const thinned = (board: Board): Board => {
  const [filling] = solve(board, { limit: 1 }).solutions;
  let givens = new Map<Cell, number>(filling!.entries());
  for (const cell of randomFrom(1)
    .shuffled([...filling!.keys()])
    .slice(0, filling!.length * share)) {
    const fewer = new Map([...givens].filter(([other]) => other !== cell));
    if (finished(judging({ ...board, givens: fewer })).verdict === "one") givens = fewer;
  }
  return { ...board, givens };
};

async function* rows(options: Options): AsyncGenerator<Row> {
  if (!isWanted("growth", options)) return;
  const boards: readonly (readonly [string, () => Board])[] = [
    ...sizes.map((size) => [`${size}x${size}`, () => empty(size).board] as const),
    ...Array.from({ length: mostGrids }, (_, k) => [`${k + 1} of 9x9`, () => chain(k + 1)] as const),
  ];
  for (const [of, make] of boards) {
    const board = make();
    const puzzle = thinned(board);
    const taken = await inTurns(
      [
        { name: "fill", pass: () => timed(() => solve(board, { limit: 1 })) },
        { name: "prove", pass: () => timed(() => finished(judging(puzzle))) },
      ],
      options.rounds,
    );
    const [fill, prove] = [median(taken.get("fill")!), median(taken.get("prove")!)];
    const figures = { cells: board.domains.length, givens: puzzle.givens.size, "fill ms": fill, "prove ms": prove };
    yield { measure: "growth", of, figures };
  }
}

export const growth: Measure = {
  name: "growth",
  about:
    "How the cost grows with the size of a grid and with the number of grids (a chain, each sharing a box with the " +
    "one before): to find one filled grid, and to prove that a puzzle with some of its digits has one solution.",
  rows,
};
