/**
 * Writes V8's compiled code of a built program beside it (`code-cache.mjs PROGRAM [TASK]`), after the program has run, so
 * that what is compiled only when it is called is in it too. Given a task, the program is run as the thread that does it.
 */
import { renameSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import process from "node:process";
import * as threads from "node:worker_threads";
import { fromSource } from "./from-source.mjs";

const [program, task] = process.argv.splice(2, Number.POSITIVE_INFINITY, "--help");
const { compiled } = await fromSource("packages/cli/src/compiled.ts");
const require = createRequire(program);
const workerData = task && { ...JSON.parse(task), program, stop: new SharedArrayBuffer(1) };
const asThread = { ...threads, parentPort: { postMessage: () => {}, on: () => {} }, workerData };
const script = compiled(program);
script.runInThisContext()({}, (name) => (task && name === "node:worker_threads" ? asThread : require(name)), program);
process.on("exit", () => {
  const unfinished = `${program}.cache.part`;
  writeFileSync(unfinished, script.createCachedData());
  renameSync(unfinished, `${program}.cache`);
});
