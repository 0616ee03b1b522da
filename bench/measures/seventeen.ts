import { soundness } from "../../packages/engine/src/search/soundness.ts";
import type { Options } from "../options.ts";
import { seventeenGivens } from "../puzzles.ts";
import { isWanted, type Measure, type Row } from "./measure.ts";

async function* rows(options: Options): AsyncGenerator<Row> {
  if (!isWanted("all-seventeen", options)) return;
  const puzzles = seventeenGivens(1);
  if (puzzles.length === 0) return;
  const start = performance.now();
  const unsound = puzzles.filter(({ board }) => soundness(board).verdict !== "one");
  const ms = performance.now() - start;
  if (unsound.length > 0) throw new Error(`not one solution: ${unsound.map(({ name }) => name).join(", ")}`);
  const figures = { "proved to have one solution": puzzles.length, "µs each": (ms / puzzles.length) * 1000 };
  yield { measure: "all-seventeen", of: "17 givens", figures };
}

export const allSeventeen: Measure = {
  name: "all-seventeen",
  about: "Every grid with 17 givens of ../shared/checks, once; nothing is measured where the list is not there.",
  rows,
};
