import { fileURLToPath } from "node:url";
import { inWorker } from "./in-worker.ts";
import type { Streams } from "./output.ts";
import { run } from "./runner.ts";

/** Put in by scripts/build.mjs: the version of package.json. */
declare const VERSION: string;

/** What is started as a thread: start.ts, built into the same folder. */
const thread = fileURLToPath(new URL("solvewright.js", import.meta.url));

const { stdout, stderr } = process;

const streams: Streams = {
  out: (text) => void stdout.write(text),
  err: (text) => void stderr.write(text),
  terminal: {
    rewrites: stderr.isTTY === true,
    colours: stdout.isTTY === true && !process.env.NO_COLOR,
    width: stdout.columns ?? 80,
  },
};

// Whoever reads may have had enough, such as `head`.
stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
  process.exit();
});

void run(process.argv.slice(2), streams, inWorker(thread), VERSION).then((code) => {
  process.exitCode = code;
});
