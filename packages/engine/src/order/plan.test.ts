import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { z } from "zod";
import { audit } from "../../test-kit/audit.ts";
import { planned } from "../../test-kit/planned.ts";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { samples } from "../../test-kit/samples.ts";
import { compile } from "../board/compile.ts";
import { listOf } from "../board/digits.ts";
import { at, isSettled, type Knowledge, startOf, withPlaced, withRemoved } from "../board/knowledge.ts";
import { definitionOf } from "../prove/definition.ts";
import { cellNamed } from "../puzzle/canvas.ts";
import { textOf } from "../speech/line.ts";
import { limitsOf } from "./limits.ts";

const demo = new URL("../../../../examples/paper-mill.puzzle.yaml", import.meta.url);
const puzzles = [...samples, { name: "Paper Mill", text: readFileSync(demo, "utf8") }];

const cell = z.string().regex(/^r\d+c\d+$/);
const digit = z.number().int().min(0).max(31);
const digits = z.array(digit).min(1);
const seconds = z.number().positive().multipleOf(0.1);
const spot = z.strictObject({ digit, house: z.string().min(1), cells: z.array(cell).min(1) });
const names = z.array(z.string().min(1));
const step: z.ZodType = z.lazy(() =>
  z.strictObject({
    n: z.union([z.number().int().min(1), z.string().regex(/^\d+(\.\d+)+$/)]),
    technique: z.string().regex(/^[a-z-]+$/),
    level: z.number().int().min(1).max(5),
    places: z.record(cell, digit),
    removes: z.record(cell, digits),
    spots: z.array(spot),
    relates: z.array(z.unknown()),
    because: z.strictObject({
      facts: z.record(cell, digits),
      spots: z.array(spot),
      relations: z.array(z.unknown()),
      houses: names,
      rules: names,
      recalls: z.array(z.union([z.number(), z.string()])),
      limits: z.array(cell),
      counts: z.array(z.strictObject({ plus: names, minus: names })).optional(),
    }),
    assume: z.record(cell, digit).optional(),
    steps: z.array(step).optional(),
    contradiction: z.literal(true).optional(),
    say: z.string().min(1),
    seconds,
  }),
);
const of = z.union([
  z.strictObject({ cells: z.array(cell) }),
  z.strictObject({ house: z.string() }),
  z.strictObject({ rule: z.string() }),
  z.strictObject({ grid: z.string() }),
]);
const numbers = z.array(z.number().int().min(1));
const beat = z.strictObject({
  n: z.number().int().min(1),
  name: z.string().min(1),
  seconds,
  say: z.string().min(1),
  parts: z
    .array(z.strictObject({ text: z.string().min(1), role: z.enum(["because", "so", "plain"]), of: of.optional() }))
    .min(1),
  placed: z.string().min(1),
  steps: numbers.min(1),
  standsOn: numbers,
  opens: numbers,
  writes: z.strictObject({ cells: z.record(cell, digits), spots: z.array(spot) }),
});
/** What DESIGN.md promises of `plan --json`, and nothing beside it. */
const planShape = z.strictObject({
  solved: z.boolean(),
  level: z.number().int().min(1).max(5),
  seconds,
  unshown: z.number().int().min(0),
  rules: z.strictObject({
    seconds,
    lines: z.array(
      z.strictObject({ n: z.number().int(), rule: z.string(), title: z.string(), say: z.string(), seconds }),
    ),
  }),
  acts: z.array(
    z.strictObject({
      title: z.string().min(1),
      open: z.string().min(1),
      close: z.string().min(1),
      beats: z.array(beat).min(1),
    }),
  ),
  steps: z.array(step),
  leftOut: names,
});

describe.each(puzzles)("$name", ({ text }) => {
  const board = compile(puzzleOf(text));
  const about = definitionOf(board);
  const limits = (deduction: Parameters<typeof limitsOf>[2]) => limitsOf(board, about, deduction);
  const { plan, refusals } = planned(board, { limits });
  const beats = plan.acts.flatMap((act) => act.beats);

  test("has the published shape, as JSON too", () => {
    expect(planShape.safeParse(plan).error?.issues).toBeUndefined();
    expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
  });
  test("keeps every law of steps", () => {
    expect(refusals).toEqual([]);
    expect(audit(plan, board)).toEqual({ faults: [], unshown: [] });
  });
  test("steps and beats are numbered in order, and the acts hold each beat once", () => {
    expect(plan.steps.map(({ n }) => n)).toEqual(plan.steps.map((_, k) => k + 1));
    expect(beats.flatMap(({ steps }) => steps)).toEqual(plan.steps.map(({ n }) => n));
    const numbered = [...plan.rules.lines, ...beats].map(({ n }) => n);
    expect(numbered).toEqual(numbered.map((_, k) => k + 1));
  });
  test("a beat stands on earlier beats, which say that they open it", () => {
    for (const { n, standsOn } of beats)
      for (const earlier of standsOn) {
        expect(earlier).toBeLessThan(n);
        expect(beats.find((other) => other.n === earlier)!.opens).toContain(n);
      }
    for (const { n, opens } of beats)
      for (const later of opens) expect(beats.find((other) => other.n === later)!.standsOn).toContain(n);
  });
  test("what is written holds every digit and place still possible, of open cells, two or more places for a spot", () => {
    let state: Knowledge = startOf(board);
    const named = (name: string) => cellNamed(board.canvas, name)!;
    for (const { steps, writes } of beats) {
      for (const n of steps) {
        const { places, removes } = plan.steps[Number(n) - 1]!;
        state = withPlaced(
          state,
          board,
          Object.entries(places).map(([name, digit]) => [named(name), digit]),
        );
        state = withRemoved(
          state,
          Object.entries(removes).map(([name, gone]) => [
            named(name),
            gone.reduce((set, d) => set | (1 << d), 0) as never,
          ]),
        );
      }
      for (const [name, marks] of Object.entries(writes.cells)) {
        expect(isSettled(state, named(name))).toBe(false);
        expect(marks).toEqual(listOf(at(state, named(name))));
      }
      for (const { digit, house, cells } of writes.spots) {
        const places = board.house(house)!.cells.filter((place) => listOf(at(state, place)).includes(digit));
        expect(cells).toEqual(places.map((place) => board.canvas.names[place]));
        expect(cells.length).toBeGreaterThanOrEqual(2);
        expect(cells.length).toBeLessThanOrEqual(3);
      }
    }
  });
  test("a beat of several steps keeps to forty words and three sentences", () => {
    for (const { say, steps } of beats.filter((beat) => beat.steps.length > 1)) {
      expect(say.split(/\s+/).length, say).toBeLessThanOrEqual(40);
      expect(say.match(/[.?!](\s|$)/g)!.length, `${steps} ${say}`).toBeLessThanOrEqual(3);
    }
  });
  test("the parts are the line", () => {
    for (const { parts, say } of beats) expect(textOf(parts)).toBe(say);
  });
  test("seconds add up", () => {
    const spoken = beats.reduce((sum, { seconds }) => sum + seconds, 0);
    expect(plan.rules.lines.reduce((sum, { seconds }) => sum + seconds, 0)).toBeCloseTo(plan.rules.seconds, 1);
    expect(plan.seconds).toBeGreaterThanOrEqual(plan.rules.seconds + spoken);
  });
  test("the same puzzle gives the same running order", () =>
    expect(planned(compile(puzzleOf(text)), { limits }).plan).toEqual(plan));
});
