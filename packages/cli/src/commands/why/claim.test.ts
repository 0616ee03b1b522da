import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { asked } from "../../../test-kit/asked.ts";
import { claimSchema } from "../../schemas/claim.ts";

const folder = mkdtempSync(join(tmpdir(), "solvewright-"));
const path = join(folder, "cages.puzzle.yaml");
writeFileSync(
  path,
  "puzzle: 1\ntitle: Small\nsetter: { name: us, permission: own }\ngrids: [{ id: main, size: 4 }]\ngivens: { cells: { r4c4: 4 } }\nrules:\n  - cage: { cells: r1c1 r1c2, sum: 3 }\n  - cage: { cells: r3c1 r4c1, sum: 7 }\n",
);
const judged = async (claim: string, ...more: string[]) =>
  claimSchema.parse(JSON.parse((await asked(["why", path, "--claim", claim, "--json", ...more])).out));

// By hand: two cells of 1 to 4 that make 3 hold 1 and 2, two that make 7 hold 3 and 4, the 3 where the row has a 4.
describe("a claim", () => {
  test.each([
    ["r1c1<>3 4 because cage 1", []],
    ["r1c1 is not 4 because cage at r1c2", []],
    ["r1c3<>1, r1c4<>1 2 because row 1, cage/1", []],
    ["r3c1=4 because cage 2, row 4", []],
    ["r1c1<>4 because cage 1, column 3", ["main/column/3"]],
    ['{"removes":{"r1c3":[2]},"because":{"houses":["main/row/1"],"rules":["cage/1"]}}', []],
  ])("is sound: %s", async (claim, spare) => {
    const found = await judged(claim);
    expect(found).toMatchObject({ verdict: "sound", spare, missing: [], unshown: [] });
    expect(found.say).toMatch(/^Sound: /);
  });
  test.each([
    ["r1c1<>4", ["cage/1"]],
    ["r1c3<>1 because row 1", ["cage/1"]],
    ["r1c3<>1 because cage 1", ["main/row/1"]],
    ["r2c3<>3", undefined],
  ])("lacks a reason, which is named, or does not follow: %s", async (claim, missing) => {
    const found = await judged(claim);
    if (missing) expect(found).toMatchObject({ verdict: "missing", missing });
    else expect(found.verdict).toBe("unsound");
  });
  test("rests on what the board does not show", async () => {
    const found = await judged("r1c1=1 because cage 1, r1c2=2");
    expect(found).toMatchObject({ verdict: "missing", missing: [], unshown: ["r1c2"] });
    expect(found.say).toContain("nothing on this board shows yet that row 1, column 2 is a 2");
  });
  test("does not follow, with digits that show it", async () => {
    const { verdict, counterexample, say } = await judged("r1c1=1 because cage 1, row 1");
    expect(verdict).toBe("unsound");
    expect(counterexample!.r1c1).toBe(2);
    expect(counterexample!.r1c2).toBe(1);
    expect(say).toContain("row 1, column 1 could be a 2");
  });
  test("every reason told is needed and every counterexample obeys what was named", async () => {
    const { step } = await judged("r3c1=4 because cage 2, row 4");
    expect(step).toMatchObject({ because: { facts: { r4c1: [1, 2, 3] }, rules: ["cage/2"] } });
  });
  test.each([
    ["r9c9=1", /a cell of this puzzle/],
    ["r1c1=9", /a digit that this cell can hold/],
    ["r1c1 maybe 2", /r4c5=3 or r4c5<>3/],
    ["r1c1=1 2", /one digit/],
    ["because row 1", /r4c5=3 or r4c5<>3/],
    ["r1c1=1 because cage 7", /a house or a rule/],
    ["r1c1=1 because row 9", /one of main\/row\/1/],
    ["{nonsense", /a step as JSON/],
  ])("that can't be read says what would be right: %s", async (claim, right) => {
    const { code, err } = await asked(["why", path, "--claim", claim]);
    expect(code).toBe(2);
    expect(err).toMatch(right);
  });
  test("exit codes", async () => {
    expect((await asked(["why", path, "--claim", "r1c1<>4 because cage 1"])).code).toBe(0);
    expect((await asked(["why", path, "--claim", "r1c1<>4"])).code).toBe(1);
    expect((await asked(["why", path])).code).toBe(2);
    expect((await asked(["why", path, "--claim", "r1c1<>4"], () => true)).code).toBe(3);
  });
  test.each(["r1c1<>4 because cage 1", "r1c1=1 because cage 1"])("is drawn: %s", async (claim) => {
    const picture = join(folder, "claim.svg");
    await asked(["why", path, "--claim", claim, "--picture", picture]);
    expect(readFileSync(picture, "utf8")).toMatch(/^<svg/);
  });
});
