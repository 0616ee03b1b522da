import { appendFileSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { randomFrom } from "../../../../engine/test-kit/random.ts";
import { asked } from "../../../test-kit/asked.ts";
import { assessSchema } from "../../schemas/assess.ts";
import type { Threads } from "../../threads.ts";
import { assessOne, type Paper } from "./assess-one.ts";
import { csvOf } from "./table.ts";

const newFolder = (): string => mkdtempSync(join(tmpdir(), "solvewright-"));
const puzzles = newFolder();
const save = (name: string, rest: string, title = "Small"): void =>
  writeFileSync(
    join(puzzles, `${name}.puzzle.yaml`),
    `puzzle: 1\ntitle: ${title}\nsetter: { name: us, permission: own }\ngrids: [{ id: main, size: 4 }]\n${rest}`,
  );
const grid = (rows: string): string =>
  `givens:\n  main: |\n${rows
    .match(/.{4}/g)!
    .map((row) => `    ${row}\n`)
    .join("")}`;

// By hand: 1234 3421 2143 4312; the second is the first turned half round with 1 and 2 changed over.
save("a", grid("12.434..2.....1."));
save("b", grid(".2.....1..434.12"));
save("c", grid("1..............."));
save("d", "rules:\n  - thermometre: r1c1 r1c2\n", '"Comma, and \\"quotes\\""');
save("e", "givens: { cells: { r1c1: 1 } }\nrules:\n  - cage: { cells: r1c2 r1c3, sum: 3 }\n");
for (let k = 0; k < 6; k++) save(`f${k}`, grid("12.434..2.....1.".replace(".", k % 2 === 0 ? "." : "3")));

const files = readdirSync(puzzles).sort();
const formsOf = async (...args: string[]) =>
  (await asked(["assess", puzzles, "--json", ...args])).out
    .trim()
    .split("\n")
    .map((line) => assessSchema.parse(JSON.parse(line)));
const bytesIn = (folder: string) =>
  readdirSync(folder)
    .sort()
    .map((name) => [name, readFileSync(join(folder, name), "utf8")]);

describe("assess", () => {
  test("each file has its line, in the order of names", async () => {
    const forms = await formsOf();
    expect(forms.map(({ file }) => file)).toEqual(files);
    const verdicts = Object.fromEntries(forms.map(({ file, verdict }) => [file.slice(0, 1), verdict]));
    expect(verdicts).toEqual({ a: "one", b: "one", c: "several", d: "faulty", e: "none", f: "one" });
    expect(forms[0]).toMatchObject({ level: 1, open: 9, settled: [9, 9, 9, 9, 9], refutation: 0 });
    expect(forms[3]!.problems![0]).toMatchObject({ line: 6 });
  });
  test("what turning and renaming makes equal is found", async () => {
    const [first, second, third] = await formsOf();
    expect(first!.sameAs).toContain("b.puzzle.yaml");
    expect(second!.sameAs).toContain("a.puzzle.yaml");
    expect(third!.sameAs).toBeUndefined();
  });
  test("one that is not sound makes a negative finding, no folder bad usage", async () => {
    expect((await asked(["assess", puzzles])).code).toBe(1);
    expect((await asked(["assess", join(puzzles, "nowhere")])).code).toBe(2);
    expect((await asked(["assess", puzzles, "--cores", "0"])).code).toBe(2);
  });
});

describe("the same bytes", () => {
  const whole = newFolder();
  /** Threads that answer late and out of order, by chance. */
  const threadsFrom = (seed: number): Threads => {
    const random = randomFrom(seed);
    const ask = async (paper: unknown) => {
      await new Promise((done) => setTimeout(done, random.below(12)));
      return assessOne(paper as Paper, () => false);
    };
    return { count: 3, start: () => ({ ask, end: () => {} }), build: () => "this" };
  };
  test("however many work, and in whatever order they answer", async () => {
    await asked(["assess", puzzles, "--to", whole]);
    expect(readdirSync(whole).sort()).toEqual(["assessed.csv", "assessed.jsonl"]);
    for (const seed of [1, 2, 3]) {
      const to = newFolder();
      await asked(["assess", puzzles, "--to", to], () => false, threadsFrom(seed));
      expect(bytesIn(to)).toEqual(bytesIn(whole));
    }
  });
  test.each([1, 2, 3, 4, 5])("after a stop at random and a line cut off, gone on with (%i)", async (seed) => {
    const to = newFolder();
    let looks = 3 + randomFrom(seed).below(400);
    const { code, err } = await asked(["assess", puzzles, "--to", to], () => --looks < 0);
    if (code === 3) {
      expect(err).toMatch(/Stopped after \d+ of 11 puzzles/);
      appendFileSync(join(to, "assessed.notes"), '{"file":"f5.puzzle.yaml","sha2');
    }
    await asked(["assess", puzzles, "--to", to]);
    expect(bytesIn(to)).toEqual(bytesIn(whole));
  });
  test("a second run does nothing again, and a changed file is done anew", async () => {
    const done: string[] = [];
    const threads: Threads = {
      count: 1,
      start: () => ({
        ask: async (paper) => {
          done.push((paper as Paper).file);
          return assessOne(paper as Paper, () => false);
        },
        end: () => {},
      }),
      build: () => "this",
    };
    await asked(["assess", puzzles, "--to", whole], () => false, threads);
    expect(done).toEqual([]);
    save("f5", grid("12.434..2.4...1."));
    await asked(["assess", puzzles, "--to", whole], () => false, threads);
    expect(done).toEqual(["f5.puzzle.yaml"]);
  });
});

// RFC 4180: fields with commas, quotes or line ends are quoted, a quote is doubled.
test("a table is quoted as the standard says", () =>
  expect(csvOf([{ file: 'a, "b".yaml', sha256: "0".repeat(64), verdict: "one", kinds: ["x", "y"] }])).toContain(
    '\r\n"a, ""b"".yaml",one,,,,x y,',
  ));
