import { existsSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { chained } from "../../test-kit/planned.ts";
import { claimOf } from "../deduce/claim.ts";
import { techniques } from "../deduce/registry.ts";
import { finished } from "../finished.ts";
import { definitionOf } from "../prove/definition.ts";
import { prove } from "../prove/prove.ts";
import { count } from "../search/count.ts";
import { findingLesson, type Lesson, lessonFrom, teachable } from "./lesson.ts";

const singles = techniques.filter(({ name }) => ["last-cell", "only-place", "only-digit"].includes(name));

const holds = (lesson: Lesson, technique: string): void => {
  expect(lesson.step.technique).toBe(technique);
  expect(count(lesson.board, 2)).toMatchObject({ count: 1 });
  expect(prove(claimOf(lesson.board, lesson.step), definitionOf(lesson.board))).toEqual({ verdict: "proved" });
};

describe("the lessons that are kept in docs/lessons", () => {
  const fileOf = (technique: string): URL =>
    new URL(`../../../../docs/lessons/${technique}.puzzle.yaml`, import.meta.url);
  const kept = teachable.filter((technique) => existsSync(fileOf(technique)));
  test("nearly every technique has one", () => expect(kept.length).toBeGreaterThan(teachable.length - 3));
  test.each(kept)("%s", (technique) =>
    holds(lessonFrom(readFileSync(fileOf(technique), "utf8"), technique)!, technique),
  );
  test("a lesson is none of another technique", () =>
    expect(lessonFrom(readFileSync(fileOf("naked-pair"), "utf8"), "hidden-triple")).toBeUndefined());
});

test("the same seed gives the same lesson, another seed another one", () => {
  const [one, again, other] = [1, 1, 2].map((seed) => finished(findingLesson("only-digit", seed))!);
  expect(one!.text).toBe(again!.text);
  expect(one!.text).not.toBe(other!.text);
  holds(one!, "only-digit");
});

test("what a lesson teaches can't be done without", () => {
  const lesson = finished(findingLesson("naked-pair", 1))!;
  holds(lesson, "naked-pair");
  expect(chained(lesson.board, { ladder: singles, level: 3 }).solved).toBe(false);
  const both = techniques.filter(({ name }) => [...singles.map((one) => one.name), "naked-pair"].includes(name));
  expect(chained(lesson.board, { ladder: both, level: 3 }).solved).toBe(true);
});
