/**
 * Bundles the command line: what is started, the part that reads arguments, and the program of the thread that does the
 * work, each with V8's compiled code beside it. So `--help` need not wait for the engine, nor anything for the compiler.
 */
import { spawnSync } from "node:child_process";
import { chmodSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
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
  define: { "import.meta.url": "home" },
  banner: { js: 'const home = require("node:url").pathToFileURL(__filename).href;' },
};

// What is not bundled is found on disk: a program for this machine; and what is much to read and seldom asked for.
const worker = {
  ...shared,
  entryPoints: ["packages/cli/src/worker.ts"],
  external: ["@resvg/resvg-js", "bullmq", "ioredis"],
};

/** The work behind a command is the worker's; what main.ts holds of it is never asked for there. */
const elsewhere = {
  name: "elsewhere",
  setup: ({ onResolve }) =>
    onResolve({ filter: /./ }, ({ kind, path }) => (kind === "dynamic-import" ? { path, external: true } : undefined)),
};

const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
const main = {
  ...shared,
  entryPoints: ["packages/cli/src/main.ts"],
  plugins: [elsewhere],
  define: { ...shared.define, VERSION: JSON.stringify(version) },
};

const start = {
  ...shared,
  entryPoints: ["packages/cli/src/start.ts"],
  banner: { js: `#!/usr/bin/env node\n${shared.banner.js}` },
};

/** What the worker is warmed up with: the demo's whole plan. */
const task = {
  command: "plan",
  order: { words: [join(root, "examples/paper-mill.puzzle.yaml")], flags: { json: true } },
  terminal: { rewrites: false, colours: false, width: 80 },
};

const remember = (program, ...args) => {
  const script = join(root, "scripts/code-cache.mjs");
  const { status } = spawnSync(process.execPath, [script, program, ...args], {
    stdio: ["ignore", "ignore", "inherit"],
  });
  if (status !== 0) throw new Error(`${program} does not run`);
};

/** A bundle that is whole or not there; code of an older one goes first, as V8 would not see that it is another's. */
const bundled = async (options, outfile) => {
  const { build: bundle } = await import("esbuild");
  const unfinished = `${outfile}.part`;
  await bundle({ ...options, outfile: unfinished });
  rmSync(`${outfile}.cache`, { force: true });
  renameSync(unfinished, outfile);
};

export const build = async (to = folder) => {
  mkdirSync(to, { recursive: true });
  writeFileSync(join(to, "package.json"), '{ "type": "commonjs" }\n');
  await bundled(worker, join(to, "worker.js"));
  await bundled(main, join(to, "main.js"));
  await bundled(start, join(to, "solvewright.js"));
  chmodSync(join(to, "solvewright.js"), 0o755);
  remember(join(to, "main.js"));
  remember(join(to, "worker.js"), JSON.stringify(task));
};

/** Everything that is built: the command line, and the page that it puts puzzles in. */
export const buildAll = () => Promise.all([build(), buildPage()]);

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  ensureInstalled();
  await buildAll();
}
