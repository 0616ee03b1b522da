import type { Step } from "@solvewright/engine";
import { describe, expect, test } from "vitest";
import { mill } from "../../test-kit/grounds.ts";
import { nothing, type Position } from "../solve/position.ts";
import type { Ask, Nudge, Reply } from "./asks.ts";
import { type Helper, helperFor } from "./helper.ts";

const asking =
  (helper: Helper) =>
  <A extends Ask["ask"]>(ask: Extract<Ask, { ask: A }>): Extract<Reply, { reply: A }> =>
    helper(ask) as Extract<Reply, { reply: A }>;
const started = (): Helper => {
  const helper = helperFor();
  helper({ ask: "start", puzzle: mill.data.puzzle });
  return helper;
};
const ask = asking(started());
const nudged = (position: Position, told = {}) => ask<"nudge">({ ask: "nudge", position, eye: [], told });
const why = (position: Position, cell: string, digit: number) => ask<"why">({ ask: "why", position, cell, digit });
const textIn = ({ line }: Nudge): string => line.parts.map(({ text }) => text).join("");

const withSteps = (position: Position, steps: readonly Step[]): Position => ({
  ...position,
  settled: Object.assign({ ...position.settled }, ...steps.map(({ places }) => places)),
});

/** Follows every nudge: settles what it settles, and keeps in mind what it takes out. */
const followed = (asked = ask, start = nothing) => {
  const told: Record<string, readonly number[]> = {};
  const nudges: Nudge[] = [];
  let position = start;
  while (nudges.length < 200) {
    const { nudge } = asked<"nudge">({ ask: "nudge", position, eye: [], told });
    if (!nudge) break;
    nudges.push(nudge);
    position = withSteps(position, nudge.line.steps);
    for (const { removes } of nudge.line.steps)
      for (const [cell, digits] of Object.entries(removes)) told[cell] = [...(told[cell] ?? []), ...digits];
  }
  return { position, nudges };
};

describe("nudges", () => {
  test("followed one by one from the empty board, they fill it, and every digit is right", () => {
    const { position } = followed();
    expect(Object.keys(position.settled)).toHaveLength(mill.cells.size);
    expect(ask<"check">({ ask: "check", position }).wrong).toEqual([]);
  });

  test("the show's own words are taken where they fit the board", () => {
    const withOrder = asking(started());
    const { plan } = withOrder<"order">({ ask: "order" });
    withOrder<"learn">({ ask: "learn", plan: plan! });
    const beats = new Set(plan!.acts.flatMap((act) => act.beats.map(({ say }) => say)));
    const { nudges, position } = followed(withOrder);
    expect(Object.keys(position.settled)).toHaveLength(mill.cells.size);
    expect(textIn(nudges[0]!)).toBe(plan!.acts[0]!.beats[0]!.say);
    // Easy digits that the show tells in one breath are nudged one by one, so that nudges can't be counted against beats.
    const told = nudges.filter((nudge) => beats.has(textIn(nudge)));
    expect(told.length).toBeGreaterThan((beats.size * 2) / 3);
  });

  test("grade one names a place, grade two what to use, and neither gives a digit of a clue's away", () => {
    const { nudge } = nudged(nothing);
    expect(nudge!.where).toBe("Look at row 5 of the yard.");
    expect(nudge!.use).toBe("The cage of 5.");
  });

  test("the line ends in one breath", () => {
    for (const nudge of followed().nudges)
      expect(textIn(nudge).split(/\s+/).length, textIn(nudge)).toBeLessThanOrEqual(45);
  });

  test("a wrong digit is counted and never leaned on", () => {
    const wrong: Position = { ...nothing, settled: { r4c6: 4 } };
    expect(nudged(wrong).wrong).toBe(1);
    expect(nudged(wrong).nudge).toEqual(nudged(nothing).nudge);
  });

  test("marks are leaned on where they hold the right digit and another", () => {
    const { position } = followed();
    const right = position.settled.r5c8!;
    const pair = { ...nothing, marks: { r5c8: [right, right === 1 ? 2 : 1] } };
    expect(nudged(pair).nudge).not.toEqual(nudged(nothing).nudge);
    const missing = { ...nothing, marks: { r5c8: [1, 2, 3, 5, 6].filter((digit) => digit !== right) } };
    expect(nudged(missing)).toEqual(nudged(nothing));
  });

  test("a lone mark is neither used nor confirmed", () => {
    const { position } = followed();
    const guessed = { ...nothing, marks: { r5c8: [position.settled.r5c8!], r1c6: [position.settled.r1c6!] } };
    expect(nudged(guessed)).toEqual(nudged(nothing));
  });

  test("what a nudge took out need not be marked to go on", () => {
    const first = nudged(nothing).nudge!;
    const told = Object.fromEntries(first.line.steps.flatMap(({ removes }) => Object.entries(removes)));
    expect(nudged(withSteps(nothing, first.line.steps), told).nudge).not.toEqual(first);
  });

  test("a full board has none", () => {
    expect(nudged(followed().position).nudge).toBeUndefined();
  });
});

describe("why can't this be", () => {
  const three: Position = { ...nothing, settled: { r4c6: 3 } };

  test("what is plain to see comes first", () => {
    const { answer, lines } = why(three, "r4c8", 3);
    expect(answer).toBe("cannot");
    expect(lines.map(({ placed }) => placed)).toEqual([
      expect.stringMatching(/has its 3 in row \d, column \d of the (mill|yard), so there's no 3 in row/),
    ]);
    expect(lines[0]!.steps[0]!.because.facts).toEqual({ r4c6: [3] });
  });

  test("a digit that a grid does not have is said to be none of its", () => {
    expect(why(nothing, "r4c6", 8).lines[0]!.placed).toBe("It lies in the yard, which has only 1 to 6.");
  });

  test("the right digit can be there, and nothing more is said", () => {
    expect(why(nothing, "r4c6", 3)).toMatchObject({ answer: "can", steps: 1 });
    expect(why(three, "r4c6", 3).answer).toBe("can");
  });

  test("every other digit is answered at the start, in at most three lines", () => {
    for (const { name, digits } of [...mill.cells.values()].filter((_, k) => k % 9 === 0))
      for (const digit of digits) {
        const { answer, lines } = why(nothing, name, digit);
        expect(["can", "cannot"]).toContain(answer);
        expect(lines.length).toBeLessThanOrEqual(3);
      }
  });

  test("the cell's own digit and marks are left aside", () => {
    const stuck: Position = { ...nothing, settled: { r4c6: 2 }, marks: { r4c7: [1, 2] } };
    expect(why(stuck, "r4c6", 2)).toMatchObject({ answer: "cannot", wrong: 0 });
    expect(why(stuck, "r4c7", 4).wrong).toBe(1);
  });
});

test("a check counts what is settled, what is open, and names what is not right", () => {
  const position: Position = { ...nothing, settled: { r4c6: 4, r4c5: 7 }, marks: { r1c6: [1] } };
  expect(ask<"check">({ ask: "check", position })).toEqual({ reply: "check", wrong: ["r4c6"], settled: 2, open: 89 });
});

test("nothing can be asked before the start", () => {
  expect(() => helperFor()({ ask: "check", position: nothing })).toThrow("before the start");
});
