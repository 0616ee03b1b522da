import { describe, expect, test } from "vitest";
import { audit } from "../../../test-kit/audit.ts";
import { planned } from "../../../test-kit/planned.ts";
import { puzzleOf } from "../../../test-kit/puzzles.ts";
import { samples } from "../../../test-kit/samples.ts";
import type { Board } from "../../board/board.ts";
import { compile } from "../../board/compile.ts";
import { cellNamed } from "../../puzzle/canvas.ts";
import { counted } from "../../speech/english/counts.ts";
import type { Plan, PlanBeat } from "../plan.ts";
import { keyOf, leansOn, type Wish, wishSchema } from "./wish.ts";

const boardOf = (name: string) => compile(puzzleOf(samples.find((sample) => sample.name === name)!.text));
/** Two grids that share cells, and one grid whose solve takes pairs and joint cases. */
const board = boardOf("Two Sheds");
const deep = boardOf("Tide Table");
const plain = planned(board).plan;
const deeper = planned(deep).plan;
const beatsOf = (plan: Plan): readonly PlanBeat[] => plan.acts.flatMap(({ beats }) => beats);
const stepsOf = (plan: Plan, beat: PlanBeat) => plan.steps.filter(({ n }) => beat.steps.includes(n));
const placedIn = (plan: Plan, beat: PlanBeat): string[] =>
  stepsOf(plan, beat).flatMap(({ places }) => Object.keys(places));
const beatOf = (plan: Plan, cell: string): PlanBeat =>
  beatsOf(plan).find((beat) => placedIn(plan, beat).includes(cell))!;

/** The order made anew around wishes that were saved and read back; whole, proved and shown as any other. */
const on = (board: Board, ...wishes: Wish[]): Plan => {
  const saved = JSON.parse(JSON.stringify(wishes)).map((wish: unknown) => wishSchema.parse(wish));
  const { plan, refusals } = planned(board, { wishes: saved });
  expect(plan.solved).toBe(true);
  expect(refusals).toEqual([]);
  expect(audit(plan, board)).toEqual({ faults: [], unshown: [] });
  return plan;
};
const under = (...wishes: Wish[]): Plan => on(board, ...wishes);
const whysOf = ({ unmet }: Plan): string[] => unmet.map(({ why }) => why);

test("without a wish nothing is unmet, and the same wishes give the same order", () => {
  expect(plain.unmet).toEqual([]);
  const wish: Wish = { wish: "later", grid: "big" };
  expect(under(wish)).toEqual(under(wish));
});

describe("first", () => {
  test("a digit that stands on nothing but givens opens the show", () => {
    const isGiven = (cell: string): boolean => board.givens.has(cellNamed(board.canvas, cell)!);
    const open = plain.steps.filter(
      ({ places, because }) => Object.keys(places).length > 0 && Object.keys(because.facts).every(isGiven),
    );
    const cell = Object.keys(open.at(-1)!.places)[0]!;
    expect(placedIn(plain, beatsOf(plain)[0]!)[0]).not.toBe(cell);
    const plan = under({ wish: "first", cell });
    expect(placedIn(plan, beatsOf(plan)[0]!)[0]).toBe(cell);
    expect(plan.unmet).toEqual([]);
  });
  test("one that stands on others comes as early as they let it, and the order says so", () => {
    const order = (plan: Plan): string[] => plan.steps.flatMap(({ places }) => Object.keys(places));
    const cell = order(plain)[30]!;
    const plan = under({ wish: "first", cell });
    const before = order(plan).indexOf(cell);
    expect(before).toBeLessThan(30);
    expect(whysOf(plan)).toEqual([
      expect.stringMatching(/ stands on \w+ digits? before it, so it comes at beat \d+\.$/),
    ]);
    expect(whysOf(plan)[0]).toContain(`beat ${beatOf(plan, cell).n}.`);
  });
});

describe("feature", () => {
  test("a cell gets a beat of its own with an invitation to pause", () => {
    const cell = placedIn(plain, beatsOf(plain).find((beat) => placedIn(plain, beat).length > 2)!)[0]!;
    const plan = under({ wish: "feature", cell });
    const beat = beatOf(plan, cell);
    expect(beat.featured).toBe(true);
    expect(beat.pause?.say).toContain("ause");
    expect(placedIn(plan, beat)).toEqual([cell]);
    expect(beatsOf(plan).filter(({ featured }) => featured)).toHaveLength(1);
  });
  test("a clue is featured where it is first used", () => {
    const plan = under({ wish: "feature", rule: "cage/2" });
    const [beat] = beatsOf(plan).filter((beat) => beat.featured);
    const firstUse = plan.steps.find(({ because }) => because.rules.includes("cage/2"))!;
    expect(beat!.steps).toContain(firstUse.n);
  });
  test("a technique that the solve does not need can't be featured", () => {
    const plan = under({ wish: "feature", technique: "x-wing" });
    expect(whysOf(plan)).toEqual(["No step of this solve is a x wing: easier steps do its work."]);
  });
});

describe("what is not wanted", () => {
  test("a technique is left out, and the rest does without", () => {
    expect(deeper.steps.some(({ technique }) => technique === "hidden-pair")).toBe(true);
    const plan = on(deep, { wish: "without-technique", technique: "hidden-pair" });
    expect(plan.steps.filter(({ technique }) => technique === "hidden-pair")).toEqual([]);
    expect(plan.unmet).toEqual([]);
  });
  test("a level that does not reach the end is given up, with how far it comes", () => {
    const alone = planned(deep, { level: 1 }).plan;
    const digits = alone.steps.reduce((sum, { places }) => sum + Object.keys(places).length, 0);
    const plan = on(deep, { wish: "level", most: 1 });
    expect(alone.solved).toBe(false);
    expect(whysOf(plan)).toEqual([
      digits === 0
        ? "Up to level 1, no digit can be found at all."
        : `Up to level 1, ${counted(digits)} of 33 digits can be found and no more.`,
    ]);
  });
  test("one step is left out, others of its sort are not", () => {
    const step = deeper.steps.find(
      ({ technique, removes }) => technique === "clue-cases" && Object.keys(removes).length > 0,
    )!;
    const plan = on(deep, { wish: "without-step", step: keyOf(step) });
    const isIt = (other: typeof step): boolean =>
      other.technique === step.technique &&
      JSON.stringify(leansOn(other.because)) === JSON.stringify(leansOn(step.because)) &&
      [...Object.keys(other.removes), ...Object.keys(other.places)].includes(keyOf(step).cell);
    expect(plan.steps.filter(isIt).length === 0 || plan.unmet.length === 1).toBe(true);
    expect(plan.steps.some(({ technique }) => technique === "clue-cases")).toBe(true);
  });
  test("a cell's digit by another way", () => {
    const step = deeper.steps.find(
      ({ technique, places }) => technique === "only-place" && Object.keys(places).length > 0,
    )!;
    const cell = Object.keys(step.places)[0]!;
    const plan = on(deep, { wish: "another", cell, than: [keyOf(step)] });
    const other = plan.steps.find(({ places }) => places[cell] !== undefined)!;
    expect(keyOf(other)).not.toEqual(keyOf(step));
    expect(plan.unmet).toEqual([]);
  });
  test("no step above a level, where that reaches the end", () => {
    const plan = on(deep, { wish: "level", most: 2 });
    expect(plan.level <= 2 || plan.unmet.length === 1).toBe(true);
    expect(plan.level <= 2).toBe(plan.unmet.length === 0);
  });
});

describe("where it goes", () => {
  const gridsOf = (cell: string): readonly number[] => board.canvas.grids[cellNamed(board.canvas, cell)!]!;
  test.each(["small", "big"])("%s is kept until later", (grid) => {
    const index = board.puzzle.grids.findIndex(({ id }) => id === grid);
    const isInside = (cell: string): boolean => gridsOf(cell).every((other) => other === index);
    const entry = (plan: Plan): number => beatsOf(plan).findIndex((beat) => placedIn(plan, beat).some(isInside));
    const plan = under({ wish: "later", grid });
    expect(entry(plan)).toBeGreaterThanOrEqual(entry(plain));
    for (const why of whysOf(plan)) expect(why).toMatch(/had to be entered at beat \d+\.$/);
  });
  test("a corner to start in, or as near to it as can be", () => {
    for (const corner of ["top-left", "bottom-right"] as const) {
      const plan = under({ wish: "corner", grid: "big", corner });
      const [start] = placedIn(plan, beatsOf(plan)[0]!);
      const { row, column } = board.canvas.places[cellNamed(board.canvas, start!)!]!;
      const { row: top, column: left } = board.puzzle.grids[1]!;
      const [down, right] = [row - top, column - left];
      const far = corner === "top-left" ? Math.max(down, right) : Math.max(5 - down, 5 - right);
      expect(plan.unmet.length).toBe(down >= 0 && right >= 0 && far < 2 ? 0 : 1);
    }
  });
});

describe("own words", () => {
  const cell = placedIn(plain, beatsOf(plain)[3]!)[0]!;
  test("are said instead of ours, and timed", () => {
    const plan = under({ wish: "words", cell, say: "And here is the moment." });
    expect(beatOf(plan, cell).say).toBe("And here is the moment.");
    expect(plan.unmet).toEqual([]);
  });
  test("that take more than a breath are said, and the order says that they do", () => {
    const plan = under({ wish: "words", cell, say: Array.from({ length: 41 }, () => "word").join(" ") });
    expect(whysOf(plan)).toEqual(["These 41 words are more than one breath, which holds 40."]);
  });
});

test.each<[string, Wish]>([
  ["There is no cell r99c1.", { wish: "first", cell: "r99c1" }],
  ["There is no grid called attic.", { wish: "later", grid: "attic" }],
  ["There is no clue cage/99 any more.", { wish: "feature", rule: "cage/99" }],
])("%s", (why, wish) => expect(whysOf(under(wish))).toEqual([why]));

test.each([
  [{ wish: "first" }],
  [{ wish: "level", most: 6 }],
  [{ wish: "dance" }],
  [{ wish: "words", cell: "r1c1", say: "" }],
])("%j is no wish", (wish) => expect(wishSchema.safeParse(wish).success).toBe(false));
