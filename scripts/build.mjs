/**
 * Bundles the command line into one file: the part that reads arguments, and in it, as a text, the program of the thread
 * that does the work. So `--help` need not wait until the engine is compiled.
 */
import { chmodSync, mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { ensureInstalled, root } from "./install.mjs";
import { buildPage } from "./page.mjs";

const folder = join(root, "packages/cli/dist");

// CommonJS, since Node starts it sooner than an ES module. So main.ts has no top-level await, and `import.meta.url`
// has to be given.
const shared = {
  absWorkingDir: root,
  bundle: true,
  platform: "node",
  format: "cjs",
  target: "node20",
  conditions: ["source"],
  minifyWhitespace: true,
  minifySyntax: true,
  legalComments: "none",
  logLevel: "error",
};

// What is not bundled is found on disk: a program for this machine; and what is much to read and seldom asked for.
const worker = {
  ...shared,
  entryPoints: ["packages/cli/src/worker.ts"],
  external: ["@resvg/resvg-js", "bullmq", "ioredis"],
  define: { "import.meta.url": "home" },
  // A worker made from a text has no place of its own to look for packages from.
  banner: {
    js: 'const home = require("node:worker_threads").workerData.home;\nrequire = require("node:module").createRequire(home);',
  },
  write: false,
};

/** The work behind a command is the worker's; what main.ts holds of it is never asked for there. */
const elsewhere = {
  name: "elsewhere",
  setup: ({ onResolve }) =>
    onResolve({ filter: /./ }, ({ kind, path }) => (kind === "dynamic-import" ? { path, external: true } : undefined)),
};

const main = {
  ...shared,
  entryPoints: ["packages/cli/src/main.ts"],
  plugins: [elsewhere],
  banner: {
    js: '#!/usr/bin/env node\nconst moduleUrl = require("node:url").pathToFileURL(__filename).href;',
  },
};

const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));

export const build = async (to = folder) => {
  const { build: bundle } = await import("esbuild");
  const {
    outputFiles: [program],
  } = await bundle(worker);
  const define = {
    "import.meta.url": "moduleUrl",
    WORKER: JSON.stringify(program.text),
    VERSION: JSON.stringify(version),
  };
  const unfinished = join(to, "solvewright.js.part");
  mkdirSync(to, { recursive: true });
  writeFileSync(join(to, "package.json"), '{ "type": "commonjs" }\n');
  await bundle({ ...main, define, outfile: unfinished });
  chmodSync(unfinished, 0o755);
  renameSync(unfinished, join(to, "solvewright.js"));
};

/** Everything that is built: the command line, and the page that it puts puzzles in. */
export const buildAll = () => Promise.all([build(), buildPage()]);

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  ensureInstalled();
  await buildAll();
}
