export type { Filled, KindCases, Oracle } from "./kind-cases.ts";
export { puzzleOf } from "./puzzles.ts";
export { type Random, randomFrom } from "./random.ts";
