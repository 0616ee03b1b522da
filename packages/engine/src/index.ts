/**
 * The engine: reads puzzles, judges them, reasons about them, orders and tells a solve. Pure: no DOM, no Node, no clock,
 * no randomness. Cells are indices in the canvas's reading order; in what goes outside they are named r1c1, from 1.
 */
export type { Board, House, RuleInstance } from "./board/board.ts";
export { compile } from "./board/compile.ts";
export { digitsOf, has, listOf } from "./board/digits.ts";
export { digitAt, isSettled, type Knowledge, startOf, withPlaced, withRemoved } from "./board/knowledge.ts";
export { after } from "./deduce/after.ts";
export { type Burst, burstFrom } from "./deduce/chain.ts";
export { claimOf } from "./deduce/claim.ts";
export type { Deduction } from "./deduce/deduction.ts";
export { type Judge, judgeOf, type Prove } from "./deduce/judge.ts";
export type { SpotFact, Step } from "./deduce/step.ts";
export { type Why, type WhyQuestion, why } from "./deduce/why.ts";
export { outlineOf } from "./marks/outline.ts";
export { between, centre, distance } from "./marks/points.ts";
export type { Ink, Layer, Point, Shape } from "./marks/shape.ts";
export { limitsOf } from "./order/limits.ts";
export type { Plan, PlanAct, PlanBeat } from "./order/plan.ts";
export { planSchema } from "./order/plan-schema.ts";
export { type Planned, type PlanOptions, type PlanProgress, runningOrder } from "./order/run.ts";
export { definitionOf } from "./prove/definition.ts";
export { prove } from "./prove/prove.ts";
export { accept } from "./puzzle/accept.ts";
export type { Canvas, Cell, Place } from "./puzzle/canvas.ts";
export { canvasOf, cellNamed, nameOf, placeOf } from "./puzzle/canvas.ts";
export { decode } from "./puzzle/decode.ts";
export { fingerprint } from "./puzzle/fingerprint.ts";
export type { Draft, Grid, Problem, Puzzle, RuleEntry, Setter } from "./puzzle/puzzle.ts";
export { type Reading, read } from "./puzzle/read.ts";
export { schemaOf } from "./puzzle/schema.ts";
export { write } from "./puzzle/write.ts";
export type { Words } from "./rules/contract.ts";
export { kinds } from "./rules/registry.ts";
export { type Clash, findingClash } from "./search/clash.ts";
export type { Long } from "./search/long.ts";
export type { Solution } from "./search/run.ts";
export { judging, type Soundness } from "./search/soundness.ts";
export { type Worths, weighing } from "./search/worth.ts";
export { answerLine } from "./speech/english/answer.ts";
export { aDigit, capital, counted, digitsSaid, listed } from "./speech/english/counts.ts";
export { type Nouns, nounsFor } from "./speech/english/nouns.ts";
export { introductions } from "./speech/english/rules.ts";
export type { About, Part } from "./speech/line.ts";
export { phrase } from "./speech/phrase.ts";
