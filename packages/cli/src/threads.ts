import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import type { JobName } from "./jobs.ts";

/** Another thread at one job: it answers a message with what the job makes of it, one after the other. */
export interface Thread {
  ask(message: unknown): Promise<unknown>;
  end(): void;
}

export interface Threads {
  /** As many as can work at once. */
  readonly count: number;
  start(job: JobName): Thread;
  /** Tells one build of the program from any other. */
  build(): string;
}

/** What threads are started from: the file, and the byte that is set once the user asks to stop. */
export interface Program {
  readonly program: string;
  readonly stop: SharedArrayBuffer;
}

/** What a thread is started with. */
export type Errand = Program & { readonly job: JobName };

const started = (errand: Errand): Thread => {
  const worker = new Worker(errand.program, { workerData: errand });
  const ask = (message: unknown): Promise<unknown> =>
    new Promise((resolve, reject) => {
      worker.once("error", reject);
      worker.once("message", (answer) => {
        worker.off("error", reject);
        resolve(answer);
      });
      worker.postMessage(message);
    });
  return { ask, end: () => void worker.terminate() };
};

/** More threads of the same program; `code` is the file that holds what they do. */
export const threadsOf = (program: Program, code: string): Threads => ({
  count: availableParallelism(),
  start: (job) => started({ ...program, job }),
  build: () => createHash("sha256").update(readFileSync(code)).digest("hex").slice(0, 16),
});
