import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { accept, fingerprint, read } from "@solvewright/engine";
import { describe, expect, test } from "vitest";
import { randomFrom } from "../../../../engine/test-kit/random.ts";
import { asked } from "../../../test-kit/asked.ts";
import { type ReachForm, reachSchema } from "../../schemas/reach.ts";

type Stretch = ReachForm["way"][number];

const folder = mkdtempSync(join(tmpdir(), "solvewright-"));
const file = (name: string, text: string): string => {
  writeFileSync(join(folder, name), text);
  return join(folder, name);
};
const puzzle = (name: string, rest: string): string =>
  file(
    `${name}.puzzle.yaml`,
    `puzzle: 1\ntitle: Small\nsetter: { name: us, permission: own }\ngrids: [{ id: main, size: 4 }]\n${rest}`,
  );

// By hand: 1234 3421 2143 4312, each digit a single.
const easy = puzzle("easy", "givens:\n  main: |\n    12.4\n    34..\n    2...\n    ..1.\n");
const several = puzzle("several", "givens: { cells: { r1c1: 1 } }\n");

const formOf = async (...args: string[]) =>
  reachSchema.parse(JSON.parse((await asked(["reach", ...args, "--json"])).out));

describe("reach", () => {
  test("a puzzle of singles is solved by newcomers, each digit by the solution", async () => {
    const found = await formOf(easy);
    expect(found.open).toBe(9);
    expect(found.viewers.map(({ settled, through }) => ({ settled, through }))).toEqual(
      Array(5).fill({ settled: 9, through: true }),
    );
    expect(Object.fromEntries(found.way.map(({ cell, digit }) => [cell, digit]))).toEqual({
      r1c3: 3,
      r2c3: 2,
      r2c4: 1,
      r3c2: 1,
      r3c3: 4,
      r3c4: 3,
      r4c1: 4,
      r4c2: 3,
      r4c4: 2,
    });
    expect(found.measures).toMatchObject({ refutation: 0, whole: true });
  });
  test("says the same in words, and the same bytes twice", async () => {
    const { code, out } = await asked(["reach", easy]);
    expect(code).toBe(0);
    expect(out).toMatch(/^Everybody who knows the rules gets through alone\.\n/);
    expect((await asked(["reach", easy])).out).toBe(out);
  });
  test("claims no share of viewers and gives no marks out of any number", async () =>
    expect((await asked(["reach", easy])).out).not.toMatch(/%|percent|stars?\b|out of/i));
  test.each([
    ["light", [], "#FFFFFF"],
    ["dark", ["--dark"], "#222A26"],
  ])("draws the pauses, %s", async (_, flags, ground) => {
    const picture = join(folder, "pauses.svg");
    await asked(["reach", easy, "--picture", picture, ...flags]);
    const svg = readFileSync(picture, "utf8");
    expect(svg).toMatch(/^<svg/);
    expect(svg).toContain(ground);
  });
  test("without one solution there is no reach", async () => {
    const { code, out } = await asked(["reach", several]);
    expect(code).toBe(1);
    expect(out).toMatch(/^More than one solution/);
  });
  test("stopped", async () => expect((await asked(["reach", easy], () => true)).code).toBe(3));
});

describe("testers", () => {
  const mill = fileURLToPath(new URL("../../../../../examples/market-stall.puzzle.yaml", import.meta.url));
  const print = fingerprint(accept(read(readFileSync(mill, "utf8")))!);
  const testers = mkdtempSync(join(tmpdir(), "solvewright-"));
  /** A tester who goes the guessed way and pauses as long as `seconds` says; the first digit comes at once. */
  const save = (name: string, way: readonly Stretch[], seconds: (stretch: Stretch) => number, puzzle = print): void => {
    let at = 0;
    const entries = way.map((stretch, k) => {
      if (k > 0) at += 1000 * seconds(stretch);
      return { at, did: "settle", change: [{ settled: stretch.cell, from: null, to: stretch.digit }] };
    });
    writeFileSync(
      join(testers, name),
      JSON.stringify({ board: 1, puzzle, settled: {}, marks: {}, spots: [], entries }),
    );
  };
  test("their times are compared with the guess, and weights that made them are found", async () => {
    const { way } = await formOf(mill);
    for (const name of ["a", "b", "c"]) save(`${name}.json`, way, ({ effort }) => 5 + 7 * effort);
    save("other.json", way, () => 1, "0000");
    const { testers: tested, way: again } = await formOf(mill, "--testers", testers);
    expect(tested).toMatchObject({ testers: 3, pauses: 3 * (way.length - 1), fit: { better: true } });
    expect(tested!.fit!.error).toBeLessThan(0.1);
    expect(tested!.fit!.weights.always).toBeCloseTo(5, 0);
    expect(tested!.fit!.weights.thought).toBeCloseTo(7, 1);
    expect(tested!.correlation!.mean).toBeGreaterThan(0.6);
    expect(again[0]!.pause).toBeCloseTo(5 + 7 * way[0]!.effort, 0);
    expect((await asked(["reach", mill, "--testers", testers])).err).toContain("One of the files belongs to another");
  });
  test("times without rhyme are not fitted to", async () => {
    const { way } = await formOf(mill);
    const random = randomFrom(3);
    for (const name of ["a", "b", "c"]) save(`${name}.json`, way, () => 1 + random.below(60));
    const { testers: tested } = await formOf(mill, "--testers", testers);
    expect(Math.abs(tested!.correlation!.mean)).toBeLessThan(0.4);
    expect(tested!.fit!.error).toBeGreaterThan(8);
  });
  test("what is no board file is refused", async () => {
    writeFileSync(join(testers, "odd.json"), "{}");
    expect((await asked(["reach", mill, "--testers", testers])).code).toBe(2);
    expect((await asked(["reach", mill, "--testers", join(testers, "nowhere")])).code).toBe(2);
  });
});
