import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { compile } from "../board/compile.ts";
import { techniques } from "../deduce/registry.ts";
import { runningOrder } from "../order/run.ts";
import { definitionOf } from "../prove/definition.ts";
import { prove } from "../prove/prove.ts";
import { phrases } from "./english/lines/registry.ts";
import { textOf, wordsIn } from "./line.ts";

test("every technique has its words", () => {
  for (const { name } of techniques) expect(Object.keys(phrases)).toContain(name);
});

const examples = fileURLToPath(new URL("../../../../examples/", import.meta.url));
const plans = readdirSync(examples)
  .filter((name) => name.endsWith(".puzzle.yaml"))
  .map((name) => {
    const board = compile(puzzleOf(readFileSync(`${examples}${name}`, "utf8")));
    const about = definitionOf(board);
    const running = runningOrder(board, (claim) => prove(claim, about));
    let next = running.next();
    while (!next.done) next = running.next();
    return { name, grids: board.puzzle.grids, plan: next.value.plan };
  });

const sentencesOf = (text: string): string[] => text.split(/(?<=[.?:])\s+(?=[A-Z0-9])/);

describe.each(plans)("$name", ({ plan, grids }) => {
  const beats = plan.acts.flatMap((act) => act.beats);
  test.each(beats)("$n: $say", ({ say, placed, parts, steps }) => {
    expect(textOf(parts)).toBe(say);
    for (const text of [say, placed]) {
      expect(text).toMatch(/^[A-Z0-9].*[.?]$/s);
      expect(text).not.toMatch(/undefined|\[object|NaN| {2}| [,.;:]|,,|r\d+c\d+/);
    }
    expect(say).not.toMatch(/\b(row|column) \d/);
    for (const sentence of sentencesOf(say)) expect(wordsIn(sentence)).toBeLessThanOrEqual(20);
    if (steps.length > 1) expect(wordsIn(say)).toBeLessThanOrEqual(40);
    if (grids.length > 1) expect(grids.some(({ called }) => placed.includes(called))).toBe(true);
  });
  test("reads as it did: changed only on purpose", () =>
    expect(`${beats.map(({ n, say }) => `${n}. ${say}`).join("\n")}\n`).toMatchFileSnapshot(
      `./scripts/${grids.map(({ id }) => id).join("-")}-${beats.length}.txt`,
    ));
});
