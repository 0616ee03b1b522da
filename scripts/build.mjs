/** Bundles the command line into one file. A command's module stays lazy in it: it runs when it is first imported. */
import { chmodSync, mkdirSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { ensureInstalled, root } from "./install.mjs";

const folder = join(root, "packages/cli/dist");

// CommonJS, since Node starts it sooner than an ES module. So main.ts has no top-level await, and `import.meta.url`
// has to be given.
const banner = '#!/usr/bin/env node\nconst moduleUrl = require("node:url").pathToFileURL(__filename).href;';

const options = {
  absWorkingDir: root,
  entryPoints: ["packages/cli/src/main.ts"],
  bundle: true,
  platform: "node",
  format: "cjs",
  target: "node20",
  conditions: ["source"],
  define: { "import.meta.url": "moduleUrl" },
  banner: { js: banner },
  minifyWhitespace: true,
  minifySyntax: true,
  legalComments: "none",
  logLevel: "error",
};

export const build = async () => {
  const { build: bundle } = await import("esbuild");
  const unfinished = join(folder, "solvewright.js.part");
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, "package.json"), '{ "type": "commonjs" }\n');
  await bundle({ ...options, outfile: unfinished });
  chmodSync(unfinished, 0o755);
  renameSync(unfinished, join(folder, "solvewright.js"));
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  ensureInstalled();
  await build();
}
