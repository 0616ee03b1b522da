import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { asked } from "../../../test-kit/asked.ts";
import { reachSchema } from "../../schemas/reach.ts";

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
