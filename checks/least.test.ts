import { readdirSync, readFileSync } from "node:fs";
import process from "node:process";
import { expect, test } from "vitest";
import { isOne } from "../packages/engine/src/board/digits.ts";
import { at } from "../packages/engine/src/board/knowledge.ts";
import { claimOf } from "../packages/engine/src/deduce/claim.ts";
import { combinations } from "../packages/engine/src/deduce/combinations.ts";
import type { Deduction, Reasons } from "../packages/engine/src/deduce/deduction.ts";
import { definitionOf } from "../packages/engine/src/prove/definition.ts";
import { prove } from "../packages/engine/src/prove/prove.ts";
import { type Lesson, lessonFrom } from "../packages/engine/src/teach/lesson.ts";

/** Reasons of more premises are left to `LEAST=9 npx vitest run checks/least.test.ts`: the search is exhaustive. */
const mostPremises = Number(process.env.LEAST ?? 6);

const folder = new URL("../docs/lessons/", import.meta.url);
const lessons = readdirSync(folder).map((file): readonly [string, Lesson] => {
  const technique = file.replace(".puzzle.yaml", "");
  return [technique, lessonFrom(readFileSync(new URL(file, folder), "utf8"), technique)!];
});

const sizeOf = ({ facts, houses, rules, relations }: Reasons): number =>
  facts.size + houses.length + rules.length + relations.length;

type Premise = { readonly house: string } | { readonly rule: string } | { readonly cell: number };

/** Everything that could be a reason near the step: houses and clues on the cells it speaks of, and what is known of their cells. */
const premisesNear = ({ board, step, before }: Lesson): Premise[] => {
  const spoken = [...step.places.keys(), ...step.removes.keys(), ...step.because.facts.keys()];
  const touches = (cells: readonly number[]): boolean => cells.some((cell) => spoken.includes(cell));
  const houses = board.houses.filter(({ id, cells }) => step.because.houses.includes(id) || touches(cells));
  const rules = board.rules.filter(({ cells, wholeGrid }) => wholeGrid || touches(cells));
  const targets = [...step.places.keys(), ...step.removes.keys()];
  const near = houses.filter(({ cells }) => cells.some((cell) => targets.includes(cell))).flatMap(({ cells }) => cells);
  const cells = [...new Set([...near, ...spoken, ...rules.flatMap(({ cells }) => cells)])];
  return [
    ...houses.map(({ id }) => ({ house: id })),
    ...rules.map(({ id }) => ({ rule: id })),
    // That a cell has one digit left says what is to be shown, and not why.
    ...cells
      .filter((cell) => at(before, cell) !== board.domains[cell] && !(step.places.has(cell) && isOne(at(before, cell))))
      .map((cell) => ({ cell })),
  ];
};

const withReasons = ({ step, before }: Lesson, premises: readonly Premise[]): Deduction => ({
  ...step,
  because: {
    ...step.because,
    facts: new Map(premises.flatMap((one) => ("cell" in one ? [[one.cell, at(before, one.cell)] as const] : []))),
    houses: premises.flatMap((one) => ("house" in one ? [one.house] : [])),
    rules: premises.flatMap((one) => ("rule" in one ? [one.rule] : [])),
  },
});

/** The fewest premises from which the step follows, looked for among all sets of fewer than it has. */
const leastOf = (lesson: Lesson): number => {
  const own = sizeOf(lesson.step.because);
  const about = definitionOf(lesson.board);
  const all = premisesNear(lesson);
  for (let size = 0; size < own; size++)
    for (const some of size === 0 ? [[]] : combinations(all, size))
      if (prove(claimOf(lesson.board, withReasons(lesson, some)), about, 200).verdict === "proved") return size;
  return own;
};

const asked = lessons.filter(
  ([, { step }]) => step.because.relations.length === 0 && sizeOf(step.because) <= mostPremises,
);

test("reasons are as few as can be in most lessons, and never more than two over", { timeout: 600_000 }, () => {
  const over = asked.map(([technique, lesson]) => [technique, sizeOf(lesson.step.because) - leastOf(lesson)] as const);
  if (process.env.LEAST) console.log(over.map(([technique, by]) => `${technique} ${by}`).join("\n"));
  expect(over.filter(([, by]) => by > 2)).toEqual([]);
  expect(over.filter(([, by]) => by === 0).length).toBeGreaterThan(over.length / 2);
});
