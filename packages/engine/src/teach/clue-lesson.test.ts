import process from "node:process";
import { expect, test } from "vitest";
import { compile } from "../board/compile.ts";
import { claimOf } from "../deduce/claim.ts";
import { finished } from "../finished.ts";
import { definitionOf } from "../prove/definition.ts";
import { prove } from "../prove/prove.ts";
import { accept } from "../puzzle/accept.ts";
import { read } from "../puzzle/read.ts";
import { kinds } from "../rules/registry.ts";
import { count } from "../search/count.ts";
import { findingClueLesson, teachableKinds } from "./clue-lesson.ts";
import { teachable } from "./lesson.ts";

test("every kind can be taught but what only a setter can say, and none is called as a technique is", () => {
  expect(kinds.map(({ name }) => name).filter((name) => !teachableKinds.includes(name))).toEqual(["own-rule"]);
  expect(teachableKinds.filter((name) => teachable.includes(name))).toEqual([]);
});

/** One of each body shape; all of them with `LESSONS=all npx vitest run packages/engine/src/teach/clue-lesson.test.ts`. */
const few = [
  ...new Map(kinds.filter(({ body }) => body.draw).map(({ name, body }) => [body.name, name] as const)).values(),
];
const asked = process.env.LESSONS ? teachableKinds : [...few, "all-bars-shown"];

test.each(asked)("%s: one solution with it, several without, and a key step that leans on nothing else", (kind) => {
  const { text, step, board } = finished(findingClueLesson(kind, 1))!;
  const puzzle = accept(read(text))!;
  const without = puzzle.rules.filter((rule) => rule.kind !== kind);
  expect(count(compile(puzzle), 2)).toEqual({ count: 1, exact: true });
  expect(count(compile({ ...puzzle, rules: without }), 2).count).toBe(2);
  const named = [...step.because.rules, ...step.because.houses.flatMap((id) => board.house(id)!.rule ?? [])];
  expect(new Set(named.map((id) => board.rule(id)!.kind.name))).toEqual(new Set([kind]));
  expect(prove(claimOf(board, step), definitionOf(board))).toEqual({ verdict: "proved" });
});

test("the same seed gives the same lesson, another seed another one", () => {
  const [one, again, other] = [1, 1, 2].map((seed) => finished(findingClueLesson("thermometer", seed))!.text);
  expect(one).toBe(again);
  expect(one).not.toBe(other);
});
