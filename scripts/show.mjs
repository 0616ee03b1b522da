/** Shows what Solvewright does: makes the pack of the demo show. */
import { spawnSync } from "node:child_process";
import process from "node:process";
import { buildAll } from "./build.mjs";
import { ensureInstalled, root } from "./install.mjs";

const demo = ["pack", "examples/paper-mill.puzzle.yaml", "--to", "out/paper-mill"];

ensureInstalled();
await buildAll();
const { status } = spawnSync(process.execPath, ["packages/cli/dist/solvewright.js", ...demo], {
  cwd: root,
  stdio: "inherit",
});
process.exitCode = status ?? 1;
