import process from "node:process";
import { describe, expect, test } from "vitest";
import { compile } from "../packages/engine/src/board/compile.ts";
import { claimOf } from "../packages/engine/src/deduce/claim.ts";
import type { Deduction } from "../packages/engine/src/deduce/deduction.ts";
import type { Claim } from "../packages/engine/src/deduce/step.ts";
import { kinds } from "../packages/engine/src/rules/registry.ts";
import { cases } from "../packages/engine/test-kit/kind-files.ts";
import { chained } from "../packages/engine/test-kit/planned.ts";
import { randomBoards } from "../packages/engine/test-kit/random-boards.ts";
import { stepSeen } from "../packages/engine/test-kit/step-oracle.ts";

/** More of them: `STEPS=10000 npx vitest run checks/steps.test.ts`. */
const steps = Number(process.env.STEPS ?? 500);
const seed = 20261125;

/** A whole-grid rule binds only the cells that a reason touches, which the oracle's encoding of it can't say. */
const askable = kinds.filter(({ name, wholeGrid }) => !wholeGrid && cases.has(name));
const aKind = Math.ceil(steps / askable.length);

/** A step and, where it is a what-if, those within it. */
const withInner = (deduction: Deduction): Deduction[] =>
  deduction.steps ? deduction.steps.flatMap(withInner) : [deduction];

interface Told {
  readonly text: string;
  readonly board: ReturnType<typeof compile>;
  readonly claim: Claim;
}

/** Steps of solves of boards drawn at random, as many as are asked of each kind. */
const toldOf = (kind: (typeof askable)[number]): Told[] => {
  const told: Told[] = [];
  for (let round = 0; told.length < aKind && round < 40; round++)
    for (const { text, puzzle } of randomBoards(kind, cases.get(kind.name)!, 6, seed + round)) {
      const board = compile(puzzle);
      const { bursts } = chained(board);
      for (const step of bursts.flat().flatMap(withInner)) told.push({ text, board, claim: claimOf(board, step) });
    }
  return told.slice(0, aKind);
};

describe("every step holds by an outside solver too, which knows rules by their sentences only", () => {
  test.each(askable.map((kind) => [kind.name, kind] as const))("%s", async (_, kind) => {
    const told = toldOf(kind);
    expect(told.length).toBe(aKind);
    for (const { text, board, claim } of told)
      expect(await stepSeen(board, claim), `${JSON.stringify(claim)}\n${text}`).toEqual({
        canHold: !claim.contradiction,
        canFail: false,
      });
  });
});

test("the outside solver can say no", async () => {
  const kind = askable.find(({ name }) => name === "cage")!;
  const [{ board, claim }] = toldOf(kind).filter(({ claim: { places } }) => Object.keys(places).length > 0) as [Told];
  const [cell, digit] = Object.entries(claim.places)[0]!;
  const other = [1, 2, 3, 4].find((each) => each !== digit)!;
  expect((await stepSeen(board, { ...claim, places: { [cell]: other } })).canFail).toBe(true);
  const bare = { ...claim, because: { ...claim.because, facts: {}, rules: [], houses: [] } };
  expect((await stepSeen(board, bare)).canFail).toBe(true);
});
