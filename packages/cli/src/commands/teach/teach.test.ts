import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { accept, compile, finished, judging, read } from "@solvewright/engine";
import { expect, test } from "vitest";
import { asked } from "../../../test-kit/asked.ts";
import { teachSchema } from "../../schemas/teach.ts";

const folder = mkdtempSync(join(tmpdir(), "solvewright-"));

test("gives a sound puzzle and the line of its key step", async () => {
  const { code, out } = await asked(["teach", "only-digit", "--json"]);
  expect(code).toBe(0);
  const { puzzle, say, cells } = teachSchema.parse(JSON.parse(out));
  expect(finished(judging(compile(accept(read(puzzle!))!))).verdict).toBe("one");
  expect(say).toMatch(/\.$/);
  expect(cells!.length).toBeGreaterThan(0);
});

test("a kind of rule is taught by a puzzle that has several solutions without it", async () => {
  const { code, out } = await asked(["teach", "kropke-black", "--json"]);
  expect(code).toBe(0);
  const { kind, technique, puzzle } = teachSchema.parse(JSON.parse(out));
  expect([kind, technique]).toEqual(["kropke-black", undefined]);
  const lesson = accept(read(puzzle!))!;
  expect(finished(judging(compile(lesson))).verdict).toBe("one");
  expect(finished(judging(compile({ ...lesson, rules: [] }))).verdict).toBe("several");
});

test("writes the puzzle where it is asked to", async () => {
  const to = join(folder, "lesson.puzzle.yaml");
  expect((await asked(["teach", "only-place", "--seed", "2", "--to", to])).code).toBe(0);
  expect(read(readFileSync(to, "utf8")).problems).toEqual([]);
});

test.each([
  [["teach", "nakedpair"], "the nearest is naked-pair"],
  [["teach", "kropkeblack"], "the nearest is kropke-black"],
  [["teach", "own-rule"], "not the setter's own words"],
  [["teach", "only-place", "--seed", "x"], "whole number"],
])("%j is refused", async (args, said) => {
  const { code, err } = await asked(args);
  expect(code).toBe(2);
  expect(err).toContain(said);
});
