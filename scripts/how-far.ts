/**
 * How far plain reasoning comes: for each puzzle file named, the share of its open cells that are settled before the
 * first what-if, and what else it needs. `npx tsx scripts/how-far.ts FILES`
 */
import { readFileSync } from "node:fs";
import { basename } from "node:path";
import process from "node:process";
import { accept, compile, definitionOf, finished, prove, read, runningOrder } from "@solvewright/engine";

const planOf = (file: string) => {
  const puzzle = accept(read(readFileSync(file, "utf8")));
  if (!puzzle) throw new Error(`${file} has problems`);
  const board = compile(puzzle);
  const about = definitionOf(board);
  return { board, plan: finished(runningOrder(board, (claim) => prove(claim, about))).plan };
};

for (const file of process.argv.slice(2)) {
  const { board, plan } = planOf(file);
  const first = plan.steps.findIndex(({ assume }) => assume);
  const before = plan.steps.slice(0, first < 0 ? plan.steps.length : first);
  const open = board.canvas.names.length - board.givens.size;
  const settled = before.filter(({ places }) => Object.keys(places).length > 0).length;
  const tries = plan.steps.filter(({ assume }) => assume).length;
  const end = plan.solved ? (tries === 0 ? "to the end" : `then ${tries} what-ifs`) : "and does not end";
  console.log(`${basename(file, ".puzzle.yaml").padEnd(28)} ${settled} of ${open}, level ${plan.level}, ${end}`);
}
