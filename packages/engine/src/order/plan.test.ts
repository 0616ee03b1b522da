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
  pause: z.strictObject({ say: z.string().min(1), seconds }).optional(),
  featured: z.literal(true).optional(),
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
const focus = z.strictObject({ rules: names, houses: names, cells: z.array(cell) });
/** What docs/ promise of `plan --json`, and nothing beside it. */
const planShape = z.strictObject({
  solved: z.boolean(),
  level: z.number().int().min(1).max(5),
  seconds,
  unshown: z.number().int().min(0),
  rules: z.strictObject({
    title: z.string().min(1),
    seconds,
    lines: z.array(
      z.strictObject({ n: z.number().int(), rule: z.string(), title: z.string(), say: z.string(), seconds, focus }),
    ),
  }),
  acts: z.array(
    z.strictObject({
      title: z.string().min(1),
      seconds,
      open: z.string().min(1),
      close: z.string().min(1),
      beats: z.array(beat).min(1),
    }),
  ),
  steps: z.array(step),
  meets: names,
  unmet: z.array(z.strictObject({ wish: z.unknown(), why: z.string() })),
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
  test("a beat keeps to forty words and three sentences with all that it recalls, unless one step alone takes more", () => {
    const isOne = ({ steps }: (typeof beats)[number]): boolean =>
      steps.length === 1 && plan.steps[Number(steps[0]) - 1]!.because.recalls.length === 0;
    for (const { say, steps } of beats.filter((beat) => !isOne(beat))) {
      expect(say.split(/\s+/).length, say).toBeLessThanOrEqual(40);
      expect(say.match(/[.?!](\s|$)/g)!.length, `${steps} ${say}`).toBeLessThanOrEqual(3);
    }
  });
  test("no line opens like the one before it: not with the same three words", () => {
    for (const lines of [plan.rules.lines, beats]) {
      const openings = lines.map(({ say }) => say.toLowerCase().split(/\s+/).slice(0, 3).join(" "));
      expect(openings.filter((opening, k) => opening === openings[k - 1])).toEqual([]);
    }
  });
  test("a pause is offered before each hard step and no other", () => {
    for (const { pause, steps } of beats) {
      const isHard = steps.some((n) => plan.steps[Number(n) - 1]!.level >= 3);
      expect(pause !== undefined).toBe(isHard);
      if (pause) expect(pause.say).toMatch(/\bpause\b.*\blook\b.*\.$/i);
    }
  });
  test("each rule is a beat with its own time, drawn with what is there", () => {
    const held = plan.rules.lines.flatMap(({ focus }) => focus.rules);
    expect([...held].sort()).toEqual(board.rules.map(({ id }) => id).sort());
    for (const { focus } of plan.rules.lines) for (const id of focus.houses) expect(board.house(id)).toBeDefined();
  });
  test("the parts are the line", () => {
    for (const { parts, say } of beats) expect(textOf(parts)).toBe(say);
  });
  test("seconds add up: beats and what an act opens and closes with to acts, these and the rules to the whole", () => {
    expect(plan.rules.lines.reduce((sum, { seconds }) => sum + seconds, 0)).toBeCloseTo(plan.rules.seconds, 1);
    for (const act of plan.acts) {
      const words = `${act.open} ${act.close}`.split(/\s+/).length;
      const spoken = act.beats.reduce((sum, { seconds }) => sum + seconds, (words * 60) / 200);
      expect(Math.abs(act.seconds - spoken)).toBeLessThan(0.06);
    }
    const whole = plan.acts.reduce((sum, { seconds }) => sum + seconds, plan.rules.seconds);
    expect(plan.seconds).toBeCloseTo(whole, 1);
    for (const { seconds, pause } of beats) if (pause) expect(seconds).toBeGreaterThan(pause.seconds);
  });
  test("the same puzzle gives the same running order", () =>
    expect(planned(compile(puzzleOf(text)), { limits }).plan).toEqual(plan));
});

test("the demo's show takes less than ten minutes", () => {
  const { plan } = planned(compile(puzzleOf(readFileSync(demo, "utf8"))));
  expect(plan.seconds).toBeLessThan(600);
});

describe("what the audience has met", () => {
  const board = compile(puzzleOf(readFileSync(demo, "utf8")));
  const fresh = planned(board).plan;
  const again = planned(board, { met: fresh.meets }).plan;
  const textsOf = ({ acts, rules }: typeof fresh): string =>
    [...rules.lines, ...acts.flatMap(({ beats }) => beats)].map(({ say }) => say).join("\n");

  test("a show says what it introduces, and nothing of it to those who know it", () => {
    expect(fresh.meets).toEqual(expect.arrayContaining(["cage", "renban", "naked-pair"]));
    expect(again.meets.filter((name) => fresh.meets.includes(name))).toEqual([]);
  });
  test("a pattern's name is given at its first meeting, once, and short where it was met", () => {
    expect(textsOf(fresh).match(/That's called a naked pair\./g)).toHaveLength(1);
    expect(textsOf(fresh)).not.toContain("A naked pair again.");
    expect(textsOf(again).match(/A naked pair again\./g)).toHaveLength(1);
    expect(textsOf(again)).not.toContain("That's called");
  });
  test("a rule that was met is told quicker", () => {
    expect(again.rules.seconds).toBeLessThan(fresh.rules.seconds);
    expect(again.rules.lines.map(({ rule }) => rule)).toEqual(fresh.rules.lines.map(({ rule }) => rule));
    expect(textsOf(again)).toContain("Cages again: digits in a cage don't repeat");
  });
});
