import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { audit } from "../../test-kit/audit.ts";
import { beatsFrom } from "../../test-kit/beats.ts";
import { planned } from "../../test-kit/planned.ts";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { samples } from "../../test-kit/samples.ts";
import type { Board } from "../board/board.ts";
import { compile } from "../board/compile.ts";
import { listOf } from "../board/digits.ts";
import type { Because, Step } from "../deduce/step.ts";
import { cellNamed } from "../puzzle/canvas.ts";
import { countUnshown } from "./audience.ts";
import type { Plan, PlanBeat, PlanWrites } from "./plan.ts";

const root = new URL("../../../../", import.meta.url);
/** Puzzles whose solves need pencil marks: our demo, and those of others in checks/SOURCES.md. */
const marked = [
  "examples/paper-mill",
  "checks/published/csplib-057-killer",
  "checks/published/futoshiki-a",
  "checks/published/gecode-05",
  "checks/published/glpk-sudoku-dat",
].map((path) => ({
  name: path.split("/").at(-1)!,
  text: readFileSync(new URL(`${path}.puzzle.yaml`, root), "utf8"),
}));

const shows = [...samples, ...marked].map(({ name, text }) => {
  const board = compile(puzzleOf(text));
  return { name, board, plan: planned(board).plan };
});

const beatsOf = (plan: Plan): PlanBeat[] => plan.acts.flatMap(({ beats }) => beats);
const withBeat = (plan: Plan, n: number, change: (beat: PlanBeat) => PlanBeat): Plan => ({
  ...plan,
  acts: plan.acts.map((act) => ({ ...act, beats: act.beats.map((beat) => (beat.n === n ? change(beat) : beat)) })),
});
const withWrites = (plan: Plan, n: number, writes: Partial<PlanWrites>): Plan =>
  withBeat(plan, n, (beat) => ({ ...beat, writes: { ...beat.writes, ...writes } }));
const domainOf = (board: Board, cell: string): number[] => listOf(board.domains[cellNamed(board.canvas, cell)!]!);

/** What both count, the planner and the audit that was written apart from it; they must say the same. */
const unshownIn = (plan: Plan, board: Board): number => {
  const { unshown } = audit(plan, board, { proofs: false });
  expect(countUnshown(board, beatsFrom(plan, board)), unshown.join("; ")).toBe(unshown.length);
  return unshown.length;
};

/** The plan without each of the marks that it writes, one at a time. */
const withoutEachMark = (plan: Plan): { what: string; plan: Plan }[] =>
  beatsOf(plan).flatMap(({ n, writes }) => [
    ...Object.keys(writes.cells).map((cell) => ({
      what: `${n}: ${cell}`,
      plan: withWrites(plan, n, {
        cells: Object.fromEntries(Object.entries(writes.cells).filter(([other]) => other !== cell)),
      }),
    })),
    ...writes.spots.map((spot) => ({
      what: `${n}: ${spot.digit} in ${spot.house}`,
      plan: withWrites(plan, n, { spots: writes.spots.filter((other) => other !== spot) }),
    })),
  ]);

test("the puzzles between them are shown with both sorts of marks", () => {
  const beats = shows.flatMap(({ plan }) => beatsOf(plan));
  expect(beats.some(({ writes }) => Object.keys(writes.cells).length > 0)).toBe(true);
  expect(beats.some(({ writes }) => writes.spots.length > 0)).toBe(true);
});

describe.each(shows)("$name", ({ plan, board }) => {
  test("nothing is leaned on that was not shown, by the planner's count and by the audit's", () => {
    expect(plan.unshown).toBe(0);
    expect(unshownIn(plan, board)).toBe(0);
  });
  test("no mark is written that nobody needs: each that is left out is missed", () => {
    const unmissed = withoutEachMark(plan).filter((less) => unshownIn(less.plan, board) === 0);
    expect(unmissed.map(({ what }) => what)).toEqual([]);
  });
  test("a beat's writes dropped whole are missed", () => {
    for (const { n, writes } of beatsOf(plan))
      if (Object.keys(writes.cells).length + writes.spots.length > 0)
        expect(unshownIn(withWrites(plan, n, { cells: {}, spots: [] }), board)).toBeGreaterThan(0);
  });
  test("a mark that leaves out a digit too many is seen", () => {
    for (const { n, writes } of beatsOf(plan))
      for (const [cell, digits] of Object.entries(writes.cells)) {
        const narrow = { ...writes.cells, [cell]: digits.slice(1) };
        const damaged = withWrites(plan, n, { cells: narrow });
        expect(countUnshown(board, beatsFrom(damaged, board))).toBeGreaterThan(0);
        expect(audit(damaged, board, { proofs: false }).unshown.length).toBeGreaterThan(0);
      }
  });
  test("a mark made wider by what a later step needs gone is missed", () => {
    for (const { n, writes } of beatsOf(plan))
      for (const [cell, digits] of Object.entries(writes.cells)) {
        const wider = domainOf(board, cell)
          .filter((digit) => !digits.includes(digit))
          .map((digit) => withWrites(plan, n, { cells: { ...writes.cells, [cell]: [...digits, digit] } }));
        expect(wider.some((damaged) => unshownIn(damaged, board) > 0)).toBe(true);
      }
  });
});

/** A row of 4 in which the pair of 1 and 2 is found in one beat and used in the next. */
describe("recalls", () => {
  const board = compile(
    puzzleOf(
      "puzzle: 1\ntitle: t\nsetter: { name: us, permission: own }\ngrids:\n  - { id: main, size: 4, regions: none }\n" +
        "givens: { cells: { r3c3: 3 } }\nrules:\n  - cage: { cells: r1c1 r1c2, sum: 3 }\n",
    ),
  );
  const step = (n: number, technique: string, claim: Partial<Step>, because: Partial<Because>): Step => ({
    n,
    technique,
    level: 2,
    places: {},
    removes: {},
    spots: [],
    relates: [],
    ...claim,
    because: { facts: {}, spots: [], relations: [], houses: [], rules: [], recalls: [], limits: [], ...because },
    say: "",
    seconds: 1,
  });
  const cage = step(1, "clue-cases", { removes: { r1c1: [3, 4], r1c2: [3, 4] } }, { rules: ["cage/1"] });
  const pair = (recalls: readonly number[]): Step =>
    step(
      2,
      "naked-pair",
      { removes: { r1c3: [1, 2], r1c4: [1, 2] } },
      { facts: { r1c1: [1, 2], r1c2: [1, 2] }, houses: ["main/row/1"], recalls },
    );
  const beat = (n: number): PlanBeat => ({
    n,
    name: "",
    seconds: 1,
    say: "",
    parts: [],
    placed: "",
    steps: [n],
    standsOn: [],
    opens: [],
    writes: { cells: {}, spots: [] },
  });
  const planOf = (recalls: readonly number[]): Plan => ({
    solved: false,
    level: 2,
    seconds: 2,
    unshown: 0,
    rules: { seconds: 0, lines: [] },
    acts: [{ title: "", open: "", close: "", beats: [beat(1), beat(2)] }],
    steps: [cage, pair(recalls)],
    leftOut: [],
  });

  test("with the cage's reason said again, the pair is shown", () =>
    expect(audit(planOf([1]), board)).toEqual({ faults: [], unshown: [] }));
  test("both count nothing with the recall, and both cells without it", () => {
    expect(unshownIn(planOf([1]), board)).toBe(0);
    expect(unshownIn(planOf([]), board)).toBe(2);
  });
  test("marks do as well as the recall", () => {
    const written = withWrites(planOf([]), 1, { cells: { r1c1: [1, 2], r1c2: [1, 2] } });
    expect(unshownIn(written, board)).toBe(0);
    expect(unshownIn(withWrites(written, 1, { cells: { r1c1: [1, 2] } }), board)).toBe(1);
  });
});
