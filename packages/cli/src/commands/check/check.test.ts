import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { carryOut } from "../../carry-out.ts";
import { run } from "../../runner.ts";
import { checkSchema } from "../../schemas/check.ts";
import { checkLineSchema, type LineForm } from "../../schemas/check-line.ts";
import type { Thread, Threads } from "../../threads.ts";
import { judgeLines } from "./judge-lines.ts";

const folder = mkdtempSync(join(tmpdir(), "solvewright-"));
const file = (name: string, text: string): string => {
  writeFileSync(join(folder, name), text);
  return join(folder, name);
};
const puzzle = (name: string, rest: string, regions = "boxes"): string =>
  file(
    `${name}.puzzle.yaml`,
    `puzzle: 1\ntitle: Small\nsetter: { name: us, permission: own }\ngrids: [{ id: main, size: 4, regions: ${regions} }]\n${rest}`,
  );

const asked = async (args: readonly string[], stopped = () => false, threads?: Threads) => {
  const said: { out: string[]; err: string[] } = { out: [], err: [] };
  const streams = {
    out: (text: string) => void said.out.push(text),
    err: (text: string) => void said.err.push(text),
    terminal: { rewrites: false, colours: false, width: 100 },
  };
  const code = await run(["check", ...args], streams, (command, order) =>
    carryOut(command, order, streams, stopped, threads),
  );
  return { code, out: said.out.join(""), err: said.err.join("") };
};
const formOf = async (path: string) => checkSchema.parse(JSON.parse((await asked([path, "--json"])).out));

describe("several solutions", () => {
  // The two right columns can change their 1s and 2s, twice.
  const path = puzzle(
    "several",
    "givens: { cells: { r1c1: 1, r1c2: 2, r1c3: 3, r1c4: 4, r2c1: 3, r2c2: 4, r3c3: 4, r3c4: 3, r4c1: 4, r4c2: 3 } }\n",
  );
  test("are counted, and where they differ; small additions leave one", async () =>
    expect(await formOf(path)).toMatchObject({
      verdict: "several",
      count: { solutions: 2, exact: true },
      open: ["r2c3", "r2c4", "r4c3", "r4c4"],
      mends: [
        { change: "add", what: { r2c3: 1 }, verdict: "one" },
        { change: "add", what: { r2c3: 2 }, verdict: "one" },
        { change: "add", what: { r2c4: 2 }, verdict: "one" },
      ],
    }));
  test("in words", async () => {
    const { out } = await asked([path]);
    expect(out).toContain("It has two solutions in all, and four cells are not the same in each.");
    expect(out).toContain(
      "With any one of these added there would be exactly one:\n  r2c3: 1  a given 1 in row 2, column 3\n",
    );
  });
});

describe("no solution", () => {
  const path = puzzle("none", "givens: { cells: { r1c1: 1 } }\nrules:\n  - cage: { cells: r1c2 r1c3, sum: 3 }\n");
  test("what could be taken away", async () => {
    const { mends } = await formOf(path);
    expect(mends).toHaveLength(2);
    expect(mends).toContainEqual({ change: "remove", what: { r1c1: 1 }, verdict: "several" });
    const cage = { cells: "r1c2 r1c3", sum: 3 };
    expect(mends).toContainEqual({ change: "remove", what: { cage }, verdict: "several" });
  });
  test("in words", async () =>
    expect((await asked([path])).out).toContain("Without any one of these there would be more than one:\n  "));
});

describe("one solution", () => {
  const rules = "rules:\n  - kropke-white: r1c2 r1c3\n";
  const givens = "givens: { cells: { r1c1: 1, r1c2: 2, r2c1: 3, r3c1: 2, r3c3: 4, r4c4: 1 } }\n";
  const wording = 'wording: "Rows, columns and boxes as usual. All dots are given."\n';
  const path = puzzle("one", `${wording}${givens}${rules}`);
  test("how else it could be read, and what the setter's wording has", async () => {
    const form = await formOf(path);
    expect(form).toMatchObject({
      verdict: "one",
      assumptions: [
        { reading: "all dots are shown", rule: "all-dots-shown", outcome: "must be said", verdict: "none" },
      ],
      wording: { unsaid: [{ rule: "kropke-white", ids: ["kropke-white/1"] }], onlySaid: ["all-dots-shown"] },
    });
    expect("mends" in form).toBe(false);
  });
  test("in words", async () => {
    const { out } = await asked([path]);
    expect(out).toContain("If all dots are shown, it has no solution. The rules must say which is meant.\n");
    expect(out).toContain("A plain search for words doesn't find white dots in the setter's own wording.\n");
    expect(out).toContain(
      "The setter's own wording seems to say that all dots are shown. The file has no such rule.\n",
    );
  });
  test("what makes no difference is for machines only", async () => {
    const cage = puzzle("cage", `${givens}rules:\n  - cage: { cells: r1c3 r1c4 }\n`);
    expect((await formOf(cage)).assumptions).toMatchObject([{ outcome: "no difference" }]);
    expect((await asked([cage])).out).not.toContain("If ");
  });
});

/** Stops at the `times`th time that it is asked. */
const after = (times: number): (() => boolean) => {
  let left = times;
  return () => left-- <= 0;
};

test("stopped before its end, it gives what it knew by then", async () => {
  const path = puzzle("stopped", "givens: { cells: { r1c1: 1 } }\nrules: [ cage: { cells: r1c2 r1c3, sum: 3 } ]\n");
  const codes: number[] = [];
  for (const times of [0, 2, 4, 8]) {
    const { code, out } = await asked([path, "--json"], after(times));
    codes.push(code);
    expect(checkSchema.parse(JSON.parse(out)).stopped).toBe(code === 3 ? true : undefined);
  }
  expect(codes[0]).toBe(3);
});

describe("plain lines", () => {
  const formsOf = (out: string): LineForm[] =>
    out
      .trim()
      .split("\n")
      .map((line) => checkLineSchema.parse(JSON.parse(line)));

  test("a JSON line for each, in their order", async () => {
    const path = file("mixed.txt", "# ours\n12343412........ name\r\n\n11..............\n1234341221434321");
    const { code, out, err } = await asked(["--lines", path]);
    expect(code).toBe(1);
    expect(formsOf(out).map(({ line, verdict }) => [line, verdict])).toEqual([
      [2, "several"],
      [4, "none"],
      [5, "one"],
    ]);
    expect(err).toContain("1 with exactly one solution, 1 with several, 1 with none.");
  });

  test("published grids have their published solutions", async () => {
    const path = fileURLToPath(new URL("../../../../../checks/norvig-hardest.txt", import.meta.url));
    const { code, out, err } = await asked(["--lines", path]);
    expect({ code, says: err.includes("11 grids") && err.includes("each has exactly one solution") }).toEqual({
      code: 0,
      says: true,
    });
    expect(formsOf(out)[0]!.solutions).toEqual([
      "859612437723854169164379528986147352375268914241593786432981675617425893598736241",
    ]);
  });

  test("several threads, whichever is done first, keep the order", async () => {
    let started = 0;
    const slow = (wait: number): Thread => ({
      ask: async (texts) => {
        await new Promise((resolve) => setTimeout(resolve, wait));
        return judgeLines(texts as string[], () => false);
      },
      end: () => void started--,
    });
    const threads: Threads = { count: 3, start: () => slow([30, 0, 10][started++ % 3]!), build: () => "this" };
    const path = file("many.txt", "1234341221434321\n".repeat(1500));
    const { code, out } = await asked(["--lines", path], () => false, threads);
    expect(formsOf(out).map(({ line }) => line)).toEqual(Array.from({ length: 1500 }, (_, k) => k + 1));
    expect({ code, started }).toEqual({ code: 0, started: 0 });
  });

  test("everything that is wrong is told together, and nothing else is done", async () => {
    const { code, out } = await asked(["--lines", file("faulty.txt", "1.x.\n12..\n123\n"), "--json"]);
    expect(code).toBe(2);
    expect(JSON.parse(out).problems).toMatchObject([
      { line: 1, column: 3, read: "x" },
      { line: 3, column: 1, read: "3 characters" },
    ]);
    expect((await asked(["--lines", file("empty.txt", "\n# nothing\n")])).code).toBe(2);
  });

  test("stopped, it gives what it knew", async () => {
    const path = file("long.txt", "12343412........\n".repeat(600));
    const { code, out, err } = await asked(["--lines", path], after(300));
    expect(code).toBe(3);
    const forms = formsOf(out);
    expect(forms.length).toBeGreaterThan(100);
    expect(forms.length).toBeLessThan(600);
    expect(err).toContain(`Stopped after ${forms.length} of 600`);
  });
});
