/**
 * The planner's order beside a greedy one, the reasoning's own (always the easiest next digit), for each puzzle file
 * named: `npx tsx --conditions=source scripts/beside.ts FILES`.
 */
import { readFileSync } from "node:fs";
import { basename } from "node:path";
import process from "node:process";
import { compile } from "../packages/engine/src/board/compile.ts";
import type { Burst } from "../packages/engine/src/deduce/chain.ts";
import { techniques } from "../packages/engine/src/deduce/registry.ts";
import { finished } from "../packages/engine/src/finished.ts";
import { candidatesOf } from "../packages/engine/src/order/candidates.ts";
import { usualCosts } from "../packages/engine/src/order/costs.ts";
import { usualPace } from "../packages/engine/src/order/pace.ts";
import { poolOf } from "../packages/engine/src/order/pool.ts";
import { askedOf, priceOf } from "../packages/engine/src/order/price.ts";
import { showOf } from "../packages/engine/src/order/show.ts";
import { gatesOf } from "../packages/engine/src/order/wishes/gates.ts";
import { textOf, wordsIn } from "../packages/engine/src/speech/line.ts";
import { chained } from "../packages/engine/test-kit/planned.ts";
import { puzzleOf } from "../packages/engine/test-kit/puzzles.ts";

const manner = { costs: usualCosts, pace: usualPace, met: [], wishes: [] };

const orders = (file: string) => {
  const board = compile(puzzleOf(readFileSync(file, "utf8")));
  const { bursts, judge } = chained(board);
  const pool = poolOf(bursts, board);
  const easy = techniques.filter(({ level }) => level === 1);
  const planning = { board, judge, pool, easy, ...manner, gate: gatesOf([], board, pool), isFeatured: () => false };
  const all = finished(candidatesOf(bursts, planning));
  const figures = (order: readonly Burst[]) => {
    const { beats, steps, unshown } = showOf(board, order, manner);
    const words = beats.reduce((sum, { parts, pause }) => sum + wordsIn(textOf(parts)) + wordsIn(pause?.say ?? ""), 0);
    const seconds = beats.reduce((sum, beat) => sum + beat.seconds, 0);
    const asked = askedOf(board, beats, { seconds, words });
    const level = Math.max(...steps.map((step) => step.level));
    return { ...asked, level, unshown, price: priceOf(asked, usualCosts) };
  };
  const planned = all.map(figures).reduce((a, b) => (b.price < a.price ? b : a));
  return { planned, greedy: figures(bursts) };
};

const whole = (figure: number): string => String(Math.round(figure));

console.log(
  "| puzzle | order | seconds | level | words | marks standing | moves of the eye | not shown | weighted sum |",
);
console.log("| --- | --- | --: | --: | --: | --: | --: | --: | --: |");
for (const file of process.argv.slice(2))
  for (const [name, figures] of Object.entries(orders(file))) {
    const { seconds, level, words, standing, travel, unshown, price } = figures;
    const row = [seconds, level, words, standing, travel, unshown, price].map(whole);
    console.log(`| ${[basename(file, ".puzzle.yaml"), name, ...row].join(" | ")} |`);
  }
