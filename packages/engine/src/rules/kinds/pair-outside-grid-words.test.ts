import { expect, test } from "vitest";
import type { KindCases } from "../../../test-kit/index.ts";
import { puzzleOf } from "../../../test-kit/puzzles.ts";
import { compile } from "../../board/compile.ts";

const pairs = "kropke-black kropke-white consecutive-bar xv-x xv-v greater-than";
const outside = "sandwich little-killer x-sum skyscraper numbered-room outside-digits frame-sum index-line";
const shown = "all-dots-shown all-bars-shown all-xv-shown";
const whole = "diagonals anti-knight anti-king non-consecutive disjoint-groups windows";

const casesOf = async (name: string): Promise<KindCases> => (await import(`./${name}.cases.ts`)).cases;
const sentences = (text: string): string[] => text.split(/(?<=[.])\s+/);
const words = (sentence: string): number => sentence.split(/\s+/).length;

test.each(`${pairs} ${outside} ${shown} ${whole}`.split(" "))("the words of %s can be spoken", async (name) => {
  const { boards, example } = await casesOf(name);
  const rules = [...boards, example.puzzle].flatMap((text) => compile(puzzleOf(text)).rules);
  for (const { kind, instance, wholeGrid } of rules.filter(({ kind }) => kind.name === name)) {
    const { rule, title, noun, plural, called = noun, holds, at } = kind.words(instance);
    for (const sentence of sentences(rule)) {
      expect(words(sentence), sentence).toBeLessThanOrEqual(20);
      expect(sentence).toMatch(/^[A-Z].*\.$/);
    }
    expect(words(rule), rule).toBeLessThanOrEqual(40);
    expect([rule, title, noun, plural, called, holds].join(" ")).toMatch(/^[A-Za-z0-9 .,;'-]+$/);
    // An X and a V are capitals wherever they stand.
    for (const phrase of [noun, plural, called]) expect(phrase).toMatch(/^(?!the |an? )([a-z]|[XV](s|-sums?)?\b)/);
    expect(holds).toMatch(/^[a-z]/);
    expect(title).toMatch(/^[A-Z]/);
    expect(at.length > 0).toBe(!wholeGrid);
  }
});
