import type { Part, Step } from "@solvewright/engine";
import { describe, expect, test } from "vitest";
import { lettersOf } from "./letters.ts";
import { lettersDrawn, readingOf } from "./reading.ts";

const step = (claim: Partial<Step>, because: Partial<Step["because"]> = {}): Step => ({
  n: 1,
  technique: "test",
  level: 1,
  places: {},
  removes: {},
  spots: [],
  relates: [],
  say: "",
  seconds: 1,
  ...claim,
  because: { facts: {}, spots: [], relations: [], houses: [], rules: [], recalls: [], limits: [], ...because },
});

describe("steps that are said together", () => {
  const first = step({ removes: { r1c1: [1] } }, { facts: { r1c2: [1] }, houses: ["g/row/1"] });
  const second = step(
    { places: { r1c1: 2 } },
    { facts: { r1c1: [2, 3], r1c3: [3] }, houses: ["g/row/1"], rules: ["cage/1"] },
  );
  const third = step({ places: { r2c2: 4 } });
  const reading = readingOf({ steps: [first, second, third], next: { r3c3: 1 } });

  test("the first digits placed are what follows, the others follow next", () => {
    expect(reading).toMatchObject({ so: { r1c1: 2 }, next: { r2c2: 4, r3c3: 1 } });
  });

  test("their reasons are taken together, each once, without the cell that follows", () => {
    expect(reading).toMatchObject({
      houses: ["g/row/1"],
      rules: ["cage/1"],
      leansOn: ["r1c2", "r1c3"],
      struck: { r1c1: [1] },
    });
  });
});

test("a what-if shows what is tried and what it leads to", () => {
  const inner = [step({ places: { r1c2: 3 } }), step({ contradiction: true })];
  const reading = readingOf({ steps: [step({ assume: { r1c1: 1 }, removes: { r1c1: [1] }, steps: inner })] });
  expect(reading).toMatchObject({ whatIf: { r1c1: 1 }, ledTo: { r1c2: 3 }, so: {} });
});

describe("letters", () => {
  const parts: Part[] = [
    { text: "Six cells of this box", role: "because", of: { cells: ["r1c1", "r1c2"] } },
    { text: " stop at 6, so ", role: "plain" },
    { text: "the X", role: "because", of: { rule: "xv-x/1" } },
    { text: " needs a 3. ", role: "plain" },
    { text: "These six", role: "because", of: { cells: ["r1c1", "r1c2"] } },
    { text: "so 7 goes here", role: "so", of: { cells: ["r2c1"] } },
  ];

  test("go to the reasons in the order of the line; what is spoken of again keeps its letter, what follows has none", () => {
    expect(lettersOf(parts)).toEqual([
      { letter: "a", of: { cells: ["r1c1", "r1c2"] } },
      { letter: "b", of: { rule: "xv-x/1" } },
    ]);
  });

  test("are drawn only where their reason is", () => {
    const reading = readingOf({ steps: [step({}, { houses: ["g/row/1"] })], letters: lettersOf(parts) });
    expect(lettersDrawn(lettersOf(parts), reading).map(({ letter }) => letter)).toEqual(["a"]);
    expect(reading.leansOn).toEqual(["r1c1", "r1c2"]);
  });
});
