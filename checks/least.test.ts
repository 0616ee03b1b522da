import { readdirSync, readFileSync } from "node:fs";
import process from "node:process";
import { expect, test } from "vitest";
import { isOne } from "../packages/engine/src/board/digits.ts";
import { at } from "../packages/engine/src/board/knowledge.ts";
import type { Related } from "../packages/engine/src/board/related.ts";
import { claimOf } from "../packages/engine/src/deduce/claim.ts";
import type { Deduction, Reasons } from "../packages/engine/src/deduce/deduction.ts";
import { definitionOf } from "../packages/engine/src/prove/definition.ts";
import { prove } from "../packages/engine/src/prove/prove.ts";
import type { Cell } from "../packages/engine/src/puzzle/canvas.ts";
import { smallestHitting } from "../packages/engine/src/soundness/hitting-sets.ts";
import { type Lesson, lessonFrom } from "../packages/engine/src/teach/lesson.ts";

const folder = new URL("../docs/lessons/", import.meta.url);
const lessons = readdirSync(folder).map((file): readonly [string, Lesson] => {
  const technique = file.replace(".puzzle.yaml", "");
  return [technique, lessonFrom(readFileSync(new URL(file, folder), "utf8"), technique)!];
});

const sizeOf = ({ facts, houses, rules, relations }: Reasons): number =>
  facts.size + houses.length + rules.length + relations.length;

type Premise =
  | { readonly house: string }
  | { readonly rule: string }
  | { readonly cell: Cell }
  | { readonly related: Related };

/** Everything on the board that could be a reason: each house and clue, what is known of each cell, what ties cells together. */
const premisesOf = ({ board, step, before }: Lesson): Premise[] => {
  // That a cell has one digit left says what is to be shown, and not why.
  const isShown = (cell: Cell): boolean => step.places.has(cell) && isOne(at(before, cell));
  const cells = [...board.domains.keys()].filter((cell) => at(before, cell) !== board.domains[cell] && !isShown(cell));
  return [
    ...board.houses.map(({ id }) => ({ house: id })),
    ...board.rules.map(({ id }) => ({ rule: id })),
    ...cells.map((cell) => ({ cell })),
    ...(before.related ?? []).map((related) => ({ related })),
  ];
};

const withReasons = ({ step, before }: Lesson, premises: readonly Premise[]): Deduction => ({
  ...step,
  because: {
    ...step.because,
    facts: new Map(premises.flatMap((one) => ("cell" in one ? [[one.cell, at(before, one.cell)] as const] : []))),
    houses: premises.flatMap((one) => ("house" in one ? [one.house] : [])),
    rules: premises.flatMap((one) => ("rule" in one ? [one.rule] : [])),
    relations: premises.flatMap((one) => ("related" in one ? [one.related] : [])),
  },
});

type Follows = (premises: readonly Premise[]) => boolean;

/** What must be reached into, by every set from which the step follows: all that a largest set without it leaves out. */
const leftOut = (some: readonly Premise[], all: readonly Premise[], follows: Follows): Premise[] => {
  const kept = [...some];
  return all.filter((one) => {
    if (some.includes(one)) return false;
    if (follows([...kept, one])) return true;
    kept.push(one);
    return false;
  });
};

/**
 * The fewest premises from which the step follows, of all sets that there are. Every such set has one premise at least of
 * what a set without the step leaves out; so the smallest that reaches into all that was left out so far is tried, and
 * is either the least there is or leaves out something new. No premise that is added ever hurts, so none is missed.
 */
const leastOf = (lesson: Lesson): number => {
  const own = sizeOf(lesson.step.because);
  const about = definitionOf(lesson.board);
  const all = premisesOf(lesson);
  const follows: Follows = (some) =>
    prove(claimOf(lesson.board, withReasons(lesson, some)), about).verdict === "proved";
  let reached: readonly (readonly Premise[])[] = [];
  for (;;) {
    const some = smallestHitting(reached, [], own - 1);
    if (!some || follows(some)) return some?.length ?? own;
    const more: Premise[][] = [];
    for (let wider = some; !follows(wider); wider = [...wider, ...more.at(-1)!])
      more.push(leftOut(wider, all, follows));
    reached = [...reached, ...more].sort((a, b) => a.length - b.length);
  }
};

/**
 * Where the least shows another pattern: for a hidden set the naked one in the same house (8 premises against 4, 10
 * against 3), and for the swordfish five that make no fish (it has 12; the least that makes one has 9).
 */
const others = ["hidden-pair", "hidden-triple", "swordfish"];
/** Four empty cells give the prover much to look at: 12 s. All of them with `LEAST=all npx vitest run checks/least.test.ts`. */
const slow = ["naked-quad"];
const left = process.env.LEAST ? [] : [...others, ...slow];

test("reasons are as few as can be in most lessons, and never more than two over", { timeout: 600_000 }, () => {
  const asked = lessons.filter(([technique]) => !left.includes(technique));
  const sizes = asked.map(([technique, lesson]) => ({
    technique,
    own: sizeOf(lesson.step.because),
    least: leastOf(lesson),
  }));
  if (process.env.LEAST)
    console.log(sizes.map(({ technique, own, least }) => `${technique} ${own} ${least}`).join("\n"));
  const fair = sizes.filter(({ technique }) => !others.includes(technique));
  expect(fair.length).toBeGreaterThanOrEqual(20);
  expect(fair.filter(({ own, least }) => own > least + 2)).toEqual([]);
  expect(fair.filter(({ own, least }) => own === least).length).toBeGreaterThan(fair.length / 2);
});
