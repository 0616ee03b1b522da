import { count } from "../../packages/engine/src/search/count.ts";
import { ask, together } from "../../packages/engine/test-kit/clingo.ts";
import type { Options } from "../options.ts";
import { empty } from "../puzzles.ts";
import { inTurns, median, type Runner, ratio, timed, timedOnce } from "../turns.ts";
import { isWanted, type Measure, type Row } from "./measure.ts";

/** Grids counted: all 288 of size 4 (OEIS A107739), and so many of larger ones. */
const counted = [
  [4, 288],
  [6, 10_000],
  [9, 10_000],
  [16, 1000],
] as const;

async function* rows(options: Options): AsyncGenerator<Row> {
  if (!isWanted("counting", options)) return;
  for (const [size, many] of counted) {
    const { puzzle, board } = empty(size);
    const program = together([puzzle]);
    if (count(board, many).count !== many) throw new Error(`fewer than ${many} grids of size ${size}`);
    const runners: readonly Runner[] = [
      { name: "ours", pass: () => timed(() => count(board, many)) },
      { name: "clingo", pass: () => timedOnce(() => ask(program, many, ["--quiet=2"])) },
    ];
    const taken = await inTurns(runners, options.rounds);
    const [own, clingo] = [taken.get("ours")!, taken.get("clingo")!];
    const figures = {
      grids: many,
      "ours a second": (many / median(own)) * 1000,
      "clingo a second": (many / median(clingo)) * 1000,
      "clingo / ours": ratio(own, clingo),
    };
    yield { measure: "counting", of: `${size}x${size}`, figures };
  }
}

export const counting: Measure = {
  name: "counting",
  about: "Filled grids with boxes found one by one; clingo only counts them, and prints none.",
  rows,
};
