/** Makes the demo's pack anew for readers of the README: docs/demo-pack. Part of `npm run docs`. */
import { spawnSync } from "node:child_process";
import { rmSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";
import { buildAll } from "./build.mjs";
import { root } from "./install.mjs";

const folder = "docs/demo-pack";

await buildAll();
rmSync(join(root, folder), { recursive: true, force: true });
const { status } = spawnSync(
  process.execPath,
  ["packages/cli/dist/solvewright.js", "pack", "examples/paper-mill.puzzle.yaml", "--to", folder],
  { cwd: root, stdio: "inherit" },
);
process.exitCode = status ?? 1;
