import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { compile } from "../packages/engine/src/board/compile.ts";
import { audit } from "../packages/engine/test-kit/audit.ts";
import { planned } from "../packages/engine/test-kit/planned.ts";
import { puzzleOf } from "../packages/engine/test-kit/puzzles.ts";

/** Every puzzle here has one solution, found by somebody else; each must get a whole, proved, shown running order. */
const folders = ["./published/", "../../shared/cases/", "../../shared/checks/published/"]
  .map((folder) => fileURLToPath(new URL(folder, import.meta.url)))
  .filter(existsSync);

/** Arrows and little killers without a given, which take minutes: `npm run how-far`. */
const beyond = /\/sums-01/;

const files = folders
  .flatMap((folder) => readdirSync(folder).map((name) => `${folder}${name}`))
  .filter((file) => file.endsWith(".puzzle.yaml") && !beyond.test(file))
  .map((file) => ({ file, answer: JSON.parse(readFileSync(file.replace(".puzzle.yaml", ".answer.json"), "utf8")) }))
  .filter(({ answer }) => answer.verdict === "one")
  .map(({ file, answer }) => ({
    name: file.split("/").at(-1)!,
    file,
    solution: answer.solution as Record<string, number>,
  }));

const plannedFrom = (file: string) => {
  const board = compile(puzzleOf(readFileSync(file, "utf8")));
  return { board, ...planned(board) };
};

describe.each(files)("$name", ({ file, solution }) => {
  test("has a whole running order, each step new, earned, proved and small, and nothing leaned on that was not shown", () => {
    const { board, plan, refusals } = plannedFrom(file);
    const placed = Object.assign({}, ...plan.steps.map(({ places }) => places)) as Record<string, number>;
    for (const [cell, digit] of board.givens) placed[board.canvas.names[cell]!] = digit;
    expect(placed).toEqual(solution);
    expect(audit(plan, board)).toEqual({ faults: [], unshown: [] });
    expect({ solved: plan.solved, unshown: plan.unshown, refusals }).toEqual({
      solved: true,
      unshown: 0,
      refusals: [],
    });
  });
});
