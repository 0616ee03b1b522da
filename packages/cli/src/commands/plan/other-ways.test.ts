import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Plan } from "@solvewright/engine";
import { describe, expect, test } from "vitest";
import { asked } from "../../../test-kit/asked.ts";
import { type OtherWaysForm, otherWaysSchema } from "../../schemas/other-ways.ts";

const puzzle = fileURLToPath(new URL("../../../../../examples/rain-gauge.puzzle.yaml", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "solvewright-"));

const planned = async (...args: string[]): Promise<Plan> =>
  JSON.parse((await asked(["plan", puzzle, ...args, "--json"])).out);
const plain = await planned();
const beats = plain.acts.flatMap((act) => act.beats);
const found = async (beat: number): Promise<OtherWaysForm> =>
  JSON.parse((await asked(["plan", puzzle, "--other-ways", String(beat), "--json"])).out);

/** The first beat for whose digit there is another way, and the last, where most is known. */
const first = beats.find(({ steps }) => plain.steps.find(({ n }) => n === steps[0])!.technique === "clue-forces")!;
const last = beats.at(-1)!;

describe("for machines", () => {
  test("the other ways to each step of a beat, numbered, in the published form", async () => {
    for (const { n, name, steps } of [first, last]) {
      const form = await found(n);
      expect(otherWaysSchema.safeParse(form).error).toBeUndefined();
      expect([form.beat, form.name]).toEqual([n, name]);
      expect(form.steps.map(({ step }) => step.n)).toEqual(steps);
      for (const { ways } of form.steps) expect(ways.map((way) => way.n)).toEqual(ways.map((_, k) => k + 1));
    }
  });
});

describe("for people", () => {
  test("each way with its line, its level, its time, and the wish that takes it", async () => {
    const { code, out } = await asked(["plan", puzzle, "--other-ways", String(last.n)]);
    expect(code).toBe(0);
    const flat = out.replace(/\s+/g, " ");
    for (const { said, ways } of (await found(last.n)).steps) {
      expect(flat).toContain(said);
      for (const { n, step, placed } of ways) {
        expect(flat).toContain(placed);
        expect(flat).toContain(`${n} ${step.technique.replaceAll("-", " ")} level ${step.level}, ${step.seconds} s`);
      }
    }
  });
  test("the printed line, as it stands, in a list of wishes takes that way, and the order stays whole", async () => {
    const { out } = await asked(["plan", puzzle, "--other-ways", String(last.n)]);
    const line = out.split("\n").find((text) => text.includes("- { wish: another"))!;
    const list = join(folder, "way.wishes.yaml");
    writeFileSync(list, `wishes: 1\nask:\n${line}\n`);
    const bent = await planned("--wishes", list);
    expect(bent).toMatchObject({ solved: true, unshown: 0, unmet: [] });
    const [cell, technique] = [/cell: (r\d+c\d+)/.exec(line)![1]!, /technique: ([a-z-]+)/.exec(line)![1]];
    const placing = ({ steps }: Plan) => steps.find(({ places }) => places[cell] !== undefined)!;
    expect(placing(bent).technique).toBe(technique);
    expect(placing(bent).because).not.toEqual(placing(plain).because);
  });
  test("a beat without another way says so, with exit code 1", async () => {
    const none = beats.filter(({ steps }) => steps.length === 1 || steps.length === 2);
    for (const { n } of none) {
      if ((await found(n)).steps.some(({ ways }) => ways.length > 0)) continue;
      const { code, out } = await asked(["plan", puzzle, "--other-ways", String(n)]);
      expect(code).toBe(1);
      expect(out).toContain("No other single step gives that here.");
      return;
    }
    expect.unreachable("every beat has another way");
  });
});

test.each(["1", "99", "x"])("--other-ways %s names no beat of the solve", async (beat) => {
  const { code, err } = await asked(["plan", puzzle, "--other-ways", beat]);
  expect(code).toBe(2);
  const right = `a beat of the running order, ${beats[0]!.n} to ${last.n}`;
  expect(err.trim().split("\n").at(-1)).toBe(`--other-ways takes ${right}, not ${beat}.`);
});
test("a stop is heard", async () =>
  expect((await asked(["plan", puzzle, "--other-ways", String(last.n)], () => true)).code).toBe(3));
