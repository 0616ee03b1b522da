import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { compile, finished, judging, namedDigits, nounsFor } from "@solvewright/engine";
import { puzzleOf } from "@solvewright/engine/test-kit";
import { describe, expect, test } from "vitest";
import { planned } from "../../../engine/test-kit/planned.ts";
import { toldActs } from "./script/told-acts.ts";
import type { Show } from "./show.ts";
import { stagedBeats } from "./standing.ts";
import { picturedBeats } from "./walkthrough/pictured.ts";
import { walkthroughHtml } from "./walkthrough/walkthrough-html.ts";

const file = fileURLToPath(new URL("../../../../examples/market-stall.puzzle.yaml", import.meta.url));
const board = compile(puzzleOf(readFileSync(file, "utf8")));
// The solution is the search's, which the planner has never seen.
const [found] = finished(judging(board)).solutions;
const show: Show = { board, plan: planned(board).plan, solution: namedDigits(board, found!) };
const beats = stagedBeats(show);
const given = Object.fromEntries([...board.puzzle.givens].map(([cell, digit]) => [board.canvas.names[cell]!, digit]));

describe("what stands on the board", () => {
  test("begins empty and ends with the solution", () => {
    expect(beats[0]!.before).toEqual({ settled: {}, marks: {}, spots: [] });
    expect({ ...beats.at(-1)!.after.settled, ...given }).toEqual(show.solution);
  });
  test("never contradicts the solution: digits, marks and spots", () => {
    for (const { after } of beats) {
      for (const [cell, digit] of Object.entries(after.settled)) expect(digit).toBe(show.solution[cell]);
      for (const [cell, digits] of Object.entries(after.marks)) expect(digits).toContain(show.solution[cell]);
      for (const { digit, cells } of after.spots)
        expect(cells.some((cell) => show.solution[cell] === digit)).toBe(true);
    }
  });
  test("a settled cell bears no marks", () => {
    for (const { after } of beats)
      for (const cell of Object.keys(after.marks)) expect(after.settled).not.toHaveProperty(cell);
  });
});

test("a picture stands at the beginning of every act and never more than four beats apart", () => {
  const pictured = picturedBeats(beats);
  let since = 0;
  for (const [k, { beat, act }] of beats.entries()) {
    if (act !== beats[k - 1]?.act) expect(pictured.has(beat.n)).toBe(true);
    since = pictured.has(beat.n) ? 0 : since + 1;
    expect(since).toBeLessThan(4);
  }
});

test("the walkthrough names the cell of every digit at the beat that places it", () => {
  const html = walkthroughHtml.make(show, { page: "" }) as string;
  const nouns = nounsFor(board, "placed");
  for (const { beat, before, after } of beats) {
    const item = html.slice(
      html.indexOf(`id="beat-${beat.n}"`),
      html.indexOf(`id="beat-${beat.n + 1}"`) + 1 || undefined,
    );
    for (const name of Object.keys(after.settled).filter((cell) => !(cell in before.settled)))
      expect(item).toContain(`${after.settled[name]} ${nouns.here(board.canvas.names.indexOf(name))}`);
  }
});

test("what is told is the whole line of every beat, and its reasons are lettered in order", () => {
  const told = toldActs(show).flatMap((act) => act.beats);
  const lines = [...show.plan.rules.lines, ...show.plan.acts.flatMap((act) => act.beats)];
  expect(told.map(({ parts }) => parts.map(({ text }) => text).join(""))).toEqual(lines.map(({ say }) => say));
  for (const { reasons } of told)
    expect(reasons.map(({ letter }) => letter).join("")).toBe("abcdefghijkl".slice(0, reasons.length));
});
