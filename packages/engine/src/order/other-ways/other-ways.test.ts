import { describe, expect, test } from "vitest";
import { audit } from "../../../test-kit/audit.ts";
import { planned } from "../../../test-kit/planned.ts";
import { puzzleOf } from "../../../test-kit/puzzles.ts";
import { samples } from "../../../test-kit/samples.ts";
import { compile } from "../../board/compile.ts";
import { digitsOf, isWithin } from "../../board/digits.ts";
import { at, startOf } from "../../board/knowledge.ts";
import { afterStep } from "../../deduce/after.ts";
import type { Step } from "../../deduce/step.ts";
import { finished } from "../../finished.ts";
import { definitionOf } from "../../prove/definition.ts";
import { prove } from "../../prove/prove.ts";
import { needless } from "../../prove/small.ts";
import { cellNamed } from "../../puzzle/canvas.ts";
import { wordsIn } from "../../speech/line.ts";
import type { Plan } from "../plan.ts";
import { leansOn, type Wish } from "../wishes/wish.ts";
import { otherWays } from "./other-ways.ts";

const concluded = ({ places, removes, spots, relates }: Step) => ({ places, removes, spots, relates });
const premises = ({ because: { facts, spots, relations, houses, rules } }: Step): string[] =>
  [...Object.entries(facts), ...spots, ...relations, ...houses, ...rules]
    .map((premise) => JSON.stringify(premise))
    .sort();

describe.each(["Tide Table", "Two Sheds"])("%s", (name) => {
  const board = compile(puzzleOf(samples.find((sample) => sample.name === name)!.text));
  const about = definitionOf(board);
  const { plan } = planned(board);
  const beats = plan.acts.flatMap((act) => act.beats);
  const found = beats.flatMap(({ n }) => finished(otherWays(board, (claim) => prove(claim, about), plan, n)));
  const ways = found.flatMap(({ step, ways }) => ways.map((way) => ({ own: step, ...way })));

  const knownBefore = (step: Step) =>
    plan.steps.slice(0, plan.steps.indexOf(step)).reduce((state, one) => afterStep(state, board, one), startOf(board));

  test("every step of every beat is asked about, and some have several other ways", () => {
    expect(found.map(({ step }) => step)).toEqual(plan.steps);
    expect(found.some((step) => step.ways.length > 1)).toBe(true);
  });
  test("each concludes the same, is proved, needs each of its premises, and leans on what is known by then", () => {
    for (const { own, step } of ways) {
      expect(concluded(step)).toEqual(concluded(own));
      expect(prove(step, about).verdict).toBe("proved");
      expect(needless(step, about)).toEqual([]);
      const known = knownBefore(own);
      for (const [cell, digits] of Object.entries(step.because.facts))
        expect(isWithin(at(known, cellNamed(board.canvas, cell)!), digitsOf(digits))).toBe(true);
    }
  });
  test("no two rest on the same premises, nor on those of the order's own step", () => {
    for (const { step, ways } of found) {
      const all = [step, ...ways.map((way) => way.step)].map((one) => premises(one).join(" "));
      expect(new Set(all).size).toBe(all.length);
    }
  });
  test("each is said in full, with its level and its time at the usual pace", () => {
    for (const { step, placed } of ways) {
      expect(placed).toMatch(/^[A-Z0-9].*\.$/);
      expect(step.level).toBeGreaterThanOrEqual(1);
      expect(step.seconds).toBeGreaterThan(wordsIn(step.say) * 0.2);
    }
  });

  const bySort = (isWanted: (step: Step) => boolean): Wish[] =>
    ways.flatMap(({ own, wish }) => (wish && isWanted(own) ? [wish] : [])).slice(0, 4);
  const under = (wish: Wish): Plan => {
    const bent = planned(board, { wishes: [wish] });
    expect(bent.refusals).toEqual([]);
    return bent.plan;
  };
  const isIt = (wish: Wish, step: Step): boolean =>
    "way" in wish &&
    step.technique === wish.way.technique &&
    JSON.stringify([...leansOn(step.because)].sort()) === JSON.stringify([...wish.way.by].sort()) &&
    Object.keys("cell" in wish ? step.places : step.removes).includes(
      "cell" in wish ? wish.cell : Object.keys(wish.gone)[0]!,
    );

  test.each([
    ...bySort(({ places }) => Object.keys(places).length > 0),
    ...bySort(({ removes }) => Object.keys(removes).length > 0),
  ])("%j changes the order, which holds as any other; where it can't, the order says why", (wish) => {
    const bent = under(wish);
    expect(bent.solved).toBe(true);
    expect(audit(bent, board)).toEqual({ faults: [], unshown: [] });
    const taken = bent.steps.some((step) => isIt(wish, step));
    expect(plan.steps.some((step) => isIt(wish, step))).toBe(false);
    expect(bent.unmet.length).toBe(taken ? 0 : 1);
    for (const { why } of bent.unmet) expect(why).toMatch(/^[A-Z].*\.$/);
  });
  test("most placements can be had in the best of their other ways", () => {
    const best = found
      .flatMap((step) => step.ways.slice(0, 1))
      .flatMap(({ wish }) => (wish && "cell" in wish ? [wish] : []));
    const some = best.filter((_, k) => k % 4 === 0);
    const met = some.filter((wish) => under(wish).unmet.length === 0);
    expect(met.length * 2).toBeGreaterThan(some.length);
  });
});

describe("a way that can't be had", () => {
  const board = compile(puzzleOf(samples.find(({ name }) => name === "Tide Table")!.text));
  const whysOf = (wish: Wish): string[] => planned(board, { wishes: [wish] }).plan.unmet.map(({ why }) => why);
  const way = { technique: "x-wing", by: ["main/row/1"] };
  test("for a cell is given up, with how far it would come", () =>
    expect(whysOf({ wish: "another", cell: "r1c1", way })).toEqual([
      expect.stringMatching(/^By that way alone, .* of 33 digits can be found and no more\.$/),
    ]));
  test("for digits that nothing takes out any more says so", () =>
    expect(whysOf({ wish: "another", gone: { r4c4: [5] }, way })).toEqual([
      "No step of this order takes those digits out of row 4, column 4: it does without.",
    ]));
  test("at a cell that there is not", () =>
    expect(whysOf({ wish: "another", gone: { r99c1: [5] }, way })).toEqual(["There is no cell r99c1."]));
});
