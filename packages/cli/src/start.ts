/** What is started by hand, and again as each thread: by hand it reads arguments (main.ts), as a thread it works (worker.ts). */
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { isMainThread } from "node:worker_threads";
import { compiled } from "./compiled.ts";

const program = fileURLToPath(new URL(isMainThread ? "main.js" : "worker.js", import.meta.url));
compiled(program).runInThisContext()({}, createRequire(program), program);
