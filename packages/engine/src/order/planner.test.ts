import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { chained } from "../../test-kit/planned.ts";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { samples } from "../../test-kit/samples.ts";
import { compile } from "../board/compile.ts";
import { isOne } from "../board/digits.ts";
import { isSettled, isSolved, startOf } from "../board/knowledge.ts";
import { after } from "../deduce/after.ts";
import type { Burst } from "../deduce/chain.ts";
import { techniques } from "../deduce/registry.ts";
import { finished } from "../finished.ts";
import { arranged } from "./arrange.ts";
import { candidatesOf } from "./candidates.ts";
import { usualCosts } from "./costs.ts";
import { usualPace } from "./pace.ts";
import { poolOf } from "./pool.ts";
import { showOf } from "./show.ts";
import { gatesOf } from "./wishes/gates.ts";

const demo = new URL("../../../../examples/paper-mill.puzzle.yaml", import.meta.url);
const puzzles = [...samples, { name: "Paper Mill", text: readFileSync(demo, "utf8") }];
const manner = { costs: usualCosts, pace: usualPace, met: [], wishes: [] };

describe.each(puzzles)("$name", ({ text }) => {
  const board = compile(puzzleOf(text));
  const { bursts, judge } = chained(board);
  const pool = poolOf(bursts, board);
  const easy = techniques.filter(({ level }) => level === 1);
  const gate = gatesOf([], board, pool);
  const orders = finished(candidatesOf(bursts, { board, judge, pool, easy, ...manner, gate, isFeatured: () => false }));
  const endOf = (order: readonly Burst[]) =>
    order.flat().reduce((knowledge, step) => after(knowledge, board, step), startOf(board));

  test("every order to choose from fills the grid, each step proved", () => {
    expect(orders.length).toBeGreaterThan(1);
    for (const order of orders) {
      expect(isSolved(endOf(order))).toBe(true);
      for (const step of order.flat()) expect(judge.holds(step), step.technique).toBe(true);
    }
  });
  test("a house that just needs a digit has no other open cell, and a digit that stands was placed", () => {
    for (const order of orders) {
      let knowledge = startOf(board);
      for (const step of order.flat()) {
        const { technique, because, places } = step;
        if (technique === "last-cell")
          for (const cell of board.house(because.houses[0]!)!.cells)
            expect(isSettled(knowledge, cell)).toBe(!places.has(cell));
        if (technique === "only-place")
          for (const [cell, digits] of because.facts) if (isOne(digits)) expect(isSettled(knowledge, cell)).toBe(true);
        knowledge = after(knowledge, board, step);
      }
    }
  });
  test("nothing is shown that nobody needs: each step settles a digit or takes out what a later one leans on", () => {
    for (const order of orders.slice(0, -1)) {
      const steps = order.flat();
      for (const [k, { places, removes }] of steps.entries()) {
        const isUsed = [...removes].some(([cell, digits]) =>
          steps
            .slice(k + 1)
            .some(({ because, steps: inner = [] }) =>
              [because, ...inner.map((sub) => sub.because)].some(
                ({ facts }) => facts.has(cell) && (facts.get(cell)! & digits) !== digits,
              ),
            ),
        );
        expect(places.size > 0 || isUsed).toBe(true);
      }
    }
  });
  test("the order chosen asks no more than the reasoning's own, rearranged", () => {
    const prices = orders.map((order) => showOf(board, order, manner).price);
    const plain = showOf(board, arranged(bursts, board, judge), manner).price;
    expect(Math.min(...prices)).toBeLessThanOrEqual(plain);
    expect(prices[0]).toBeLessThan(plain * 1.1);
  });
});
