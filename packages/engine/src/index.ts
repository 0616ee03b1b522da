/**
 * The engine: reads puzzles, judges them, reasons about them, orders and tells a solve. Pure: no DOM, no Node, no clock,
 * no randomness. Cells are indices in the canvas's reading order; in what goes outside they are named r1c1, from 1.
 */
export type { Board, House, RuleInstance } from "./board/board.ts";
export { compile } from "./board/compile.ts";
export { digitsOf, has, listOf } from "./board/digits.ts";
export { digitAt, isSettled, type Knowledge, startOf, withPlaced, withRemoved } from "./board/knowledge.ts";
export { namedDigits } from "./board/named-digits.ts";
export { clashingIn, knownFrom, type Position, wrongIn, wrongMarksIn, wrongSpotsIn } from "./board/position.ts";
export { after, afterStep } from "./deduce/after.ts";
export { type Burst, burstFrom } from "./deduce/chain.ts";
export { claimOf } from "./deduce/claim.ts";
export type { Deduction } from "./deduce/deduction.ts";
export { type Judge, judgeOf, type Prove } from "./deduce/judge.ts";
export type { SpotFact, Step } from "./deduce/step.ts";
export { type Why, type WhyQuestion, why } from "./deduce/why.ts";
export { finished } from "./finished.ts";
export { outlineOf } from "./marks/outline.ts";
export { between, centre, distance } from "./marks/points.ts";
export type { Ink, Layer, Point, Shape } from "./marks/shape.ts";
export { limitsOf } from "./order/limits.ts";
export type { Plan, PlanAct, PlanBeat, RuleLine } from "./order/plan.ts";
export { planSchema } from "./order/plan-schema.ts";
export { type Planned, type PlanOptions, type PlanProgress, runningOrder } from "./order/run.ts";
export { readWishes, type WishList } from "./order/wishes/read-wishes.ts";
export { type Corner, keyOf, type StepKey, type Unmet, type Wish, wishSchema } from "./order/wishes/wish.ts";
export { definitionOf } from "./prove/definition.ts";
export { cellsOfRelation } from "./prove/form.ts";
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
export { guessOf, type Place as PausePlace, scarcity, unfitted, type Weights } from "./reach/guess.ts";
export type { Measures } from "./reach/measures.ts";
export {
  type Reach,
  type ReachOptions,
  type ReachProgress,
  reaching,
  type Stretch,
  type Viewer,
} from "./reach/reach.ts";
export type { Words } from "./rules/contract.ts";
export { nearest } from "./rules/nearest.ts";
export { kinds } from "./rules/registry.ts";
export { type Clash, findingClash } from "./search/clash.ts";
export { type Count, counting } from "./search/count.ts";
export type { Long } from "./search/long.ts";
export { findingPossibilities } from "./search/possibilities.ts";
export type { Solution } from "./search/run.ts";
export { judging, type Soundness } from "./search/soundness.ts";
export { type Worths, weighing } from "./search/worth.ts";
export { type Assumption, assuming, type Outcome } from "./soundness/assumptions.ts";
export { type Extent, measuringExtent } from "./soundness/extent.ts";
export { fileForm, fileLine, type InFile } from "./soundness/file-form.ts";
export type { Growing } from "./soundness/growing.ts";
export type { Mend } from "./soundness/mend.ts";
export { mending } from "./soundness/mending.ts";
export { type LineVerdict, lineJudge, type PlainLine, readPlainLine } from "./soundness/plain-lines.ts";
export { compareWording, type Wording } from "./soundness/wording.ts";
export { answerLine } from "./speech/english/answer.ts";
export { aDigit, capital, counted, digitsSaid, listed } from "./speech/english/counts.ts";
export { type Nouns, nounsFor } from "./speech/english/nouns.ts";
export { pausesSaid, reachLines, viewersSaid } from "./speech/english/reach.ts";
export { introductions } from "./speech/english/rules.ts";
export { assumptionLine, mendLine, mendParts, wordingLines } from "./speech/english/soundness.ts";
export { type About, type Part, textOf, wordsIn } from "./speech/line.ts";
export { phrase } from "./speech/phrase.ts";
export { findingLesson, type Lesson, lessonFrom, teachable } from "./teach/lesson.ts";
