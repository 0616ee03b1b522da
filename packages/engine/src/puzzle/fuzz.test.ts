import { describe, expect, test } from "vitest";
import { cases } from "../../test-kit/kind-files.ts";
import { type Random, randomFrom } from "../../test-kit/random.ts";
import { compile } from "../board/compile.ts";
import { accept } from "./accept.ts";
import { read } from "./read.ts";
import { write } from "./write.ts";

const files = [...cases.values()].flatMap(({ boards, example }) => [...boards.slice(0, 2), example.puzzle]);

const pieces = [
  "r0c0",
  "r1c1",
  "-",
  ": ",
  "[",
  "]",
  "{",
  "}",
  "\t",
  "\n",
  "99",
  "-1",
  "1e400",
  "cage",
  "'",
  '"',
  "&a ",
  "*a",
  "? ",
  "|",
  "#",
  "!x ",
  "%",
  "@",
  "\u0000",
  "\ufffd",
  "\u2028",
  "__proto__: 1",
  "null",
  "  ",
];
const notAmount = ["-3", "0", "1.5", "100000", "9007199254740993", "[]", "{}", '""', "~", "true", "x"];

/** Another number where one stands: often still a sound file, and another puzzle. */
const gently = (text: string, random: Random): string => {
  const { 0: number, index } = random.pick([...text.matchAll(/\d|^/g)]);
  return text.slice(0, index) + (1 + random.below(4)) + text.slice(index + number.length);
};

const mutations: readonly ((text: string, random: Random) => string)[] = [
  (text, random) => {
    const at = random.below(text.length);
    return text.slice(0, at) + random.pick(pieces) + text.slice(at + random.below(4));
  },
  (text, random) => {
    const at = random.below(text.length);
    return text.slice(0, at) + text.slice(at + 1 + random.below(12));
  },
  (text, random) => {
    const lines = text.split("\n");
    const line = random.below(lines.length);
    return lines.toSpliced(random.below(lines.length), random.below(2), lines[line]!).join("\n");
  },
  (text, random) => {
    const { 0: number, index } = random.pick([...text.matchAll(/\d+|^/g)]);
    return text.slice(0, index) + random.pick(notAmount) + text.slice(index + number.length);
  },
  (text, random) => {
    const words = [...text.matchAll(/[a-z]{3,}|^/g)];
    const [from, to] = [random.pick(words), random.pick(words)];
    return text.slice(0, from.index) + to[0] + text.slice(from.index + from[0].length);
  },
];

const mutant = (random: Random): string => {
  let text = random.pick(files);
  if (random.below(3) === 0) return gently(text, random);
  for (let k = random.below(3); k >= 0; k--) text = random.pick([gently, ...mutations])(text, random);
  return text;
};

// More of them, and others: FUZZ=100000 SEED=5 npx vitest run packages/engine/src/puzzle/fuzz.test.ts
const many = Number(process.env.FUZZ ?? 2000);
const seed = Number(process.env.SEED ?? 7);

describe(`${many} mutations of the cases of every kind, seed ${seed}`, () => {
  // One that hangs ends the test.
  const timeout = 120_000 * Math.max(1, many / 2000);
  test("never make reading throw; what is accepted is written and read back as itself", { timeout }, () => {
    const random = randomFrom(seed);
    let accepted = 0;
    for (let k = 0; k < many; k++) {
      const text = mutant(random);
      const reading = read(text);
      const lines = text.split(/\r\n|\n|\r/).length;
      for (const { line, column, read, right } of reading.problems) {
        expect(line >= 1 && line <= lines && column >= 1, text).toBe(true);
        expect(`${read}|${right}`, text).not.toMatch(/undefined|NaN|\[object/);
      }
      const puzzle = accept(reading);
      if (!puzzle) continue;
      accepted++;
      compile(puzzle);
      const back = read(write(puzzle));
      expect(back.problems, text).toEqual([]);
      expect(write(back.draft), text).toBe(write(puzzle));
    }
    expect(accepted).toBeGreaterThan(many / 20);
    expect(accepted).toBeLessThan(many / 2);
  });
});
