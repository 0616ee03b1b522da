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

/** Cages alone, some of which take so little out of so much that it is said again instead of written down. */
const boatLocks = {
  name: "Boat Locks",
  text: `puzzle: 1
title: Boat Locks
setter: { name: us, permission: own }
grids:
  - { id: main, size: 6 }
rules:
  - cage: [{ cells: r2c1 r3c1 r4c1, sum: 8 }, { cells: r6c1 r5c1 r6c2 r6c3, sum: 13 }, { cells: r4c3 r3c3, sum: 7 }]
  - cage: [{ cells: r3c6 r3c5, sum: 8 }, { cells: r1c1 r1c2 r2c2, sum: 8 }, { cells: r5c4 r4c4 r6c4 r3c4, sum: 11 }]
  - cage: [{ cells: r5c5 r5c6 r4c5 r6c5, sum: 16 }, { cells: r2c6 r2c5 r1c6, sum: 9 }]
  - cage: [{ cells: r1c4 r2c4 r2c3, sum: 12 }, { cells: r5c3 r5c2 r4c2, sum: 14 }]
`,
};

const shows = [...samples, ...marked, boatLocks].map(({ name, text }) => {
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

/** The order without one of the recalls that its steps make, one at a time. */
const withoutEachRecall = (plan: Plan): Plan[] =>
  plan.steps.flatMap((step) =>
    step.because.recalls.map((dropped) => {
      const recalls = step.because.recalls.filter((other) => other !== dropped);
      const less = { ...step, because: { ...step.because, recalls } };
      return { ...plan, steps: plan.steps.map((other) => (other === step ? less : other)) };
    }),
  );

describe("recalls of whole shows", () => {
  const recalling = shows.filter(({ plan }) => plan.steps.some(({ because }) => because.recalls.length > 0));
  test("some show has them", () => expect(recalling.length).toBeGreaterThan(0));
  test.each(recalling)(
    "$name: each is said in its beat's line, and one that is left out is missed",
    ({ plan, board }) => {
      for (const { say, steps } of beatsOf(plan)) {
        const recalls = steps.flatMap((n) => plan.steps[Number(n) - 1]!.because.recalls);
        expect(say.match(/remember,/gi) ?? []).toHaveLength(recalls.length);
      }
      for (const less of withoutEachRecall(plan)) expect(unshownIn(less, board)).toBeGreaterThan(0);
    },
  );
  test.each(recalling)("$name: nobody recalls what is yet to come", ({ plan, board }) => {
    const step = plan.steps.find(({ because }) => because.recalls.length > 0)!;
    const ahead = { ...step, because: { ...step.because, recalls: [plan.steps.length] } };
    const damaged = { ...plan, steps: plan.steps.map((other) => (other === step ? ahead : other)) };
    expect(audit(damaged, board, { proofs: false }).faults).toContain(
      `step ${step.n} recalls ${plan.steps.length}, which was not before it`,
    );
  });
});

/** Two neighbouring beats told the wrong way round. */
const swapped = (plan: Plan, n: number): Plan => {
  const beats = beatsOf(plan);
  const [a, b] = [beats.find((beat) => beat.n === n)!, beats.find((beat) => beat.n === n + 1)!];
  const numbers = new Map([...a.steps, ...b.steps].map((old, k) => [[...b.steps, ...a.steps][k]!, old]));
  const steps = plan.steps
    .map((step) => ({ ...step, n: numbers.get(step.n) ?? step.n }))
    .sort((x, y) => Number(x.n) - Number(y.n));
  const renumbered = (beat: PlanBeat): readonly (number | string)[] => beat.steps.map((step) => numbers.get(step)!);
  const one = withBeat({ ...plan, steps }, n, () => ({ ...b, n, steps: renumbered(b) }));
  return withBeat(one, n + 1, (beat) =>
    beat.n === n + 1 && beat === b ? { ...a, n: n + 1, steps: renumbered(a) } : beat,
  );
};

test("a beat told before the one that it stands on leans on what nobody has seen, unless sight shows it too", () => {
  const wrong = shows.flatMap(({ plan, board }) =>
    beatsOf(plan)
      .filter(({ n, standsOn }) => standsOn.includes(n - 1))
      .map(({ n }) => audit(swapped(plan, n - 1), board, { proofs: false })),
  );
  const seen = wrong.filter(({ faults, unshown }) => faults.length + unshown.length > 0);
  expect(wrong.length).toBeGreaterThan(50);
  expect(seen.length).toBeGreaterThan(wrong.length * 0.9);
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
    rules: { title: "", seconds: 0, lines: [] },
    acts: [{ title: "", seconds: 2, open: "", close: "", beats: [beat(1), beat(2)] }],
    steps: [cage, pair(recalls)],
    meets: [],
    unmet: [],
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
