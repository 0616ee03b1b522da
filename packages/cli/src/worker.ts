/** A thread that does the work: one command, then its exit code; or, started by such a thread, a job again and again. */
import { fileURLToPath } from "node:url";
import { parentPort, workerData } from "node:worker_threads";
import { carryOut, type Order } from "./carry-out.ts";
import { jobs } from "./jobs.ts";
import type { Terminal } from "./output.ts";
import { commands } from "./registry.ts";
import { type Errand, type Program, threadsOf } from "./threads.ts";

export interface Task {
  readonly command: string;
  readonly order: Order;
  readonly terminal: Terminal;
  /** One byte, set once the user asks to stop: seen even while the work never pauses. */
  readonly stop: SharedArrayBuffer;
}

export type Message = { readonly out: string } | { readonly err: string } | { readonly code: number };

const send = (message: Message): void => parentPort!.postMessage(message);

const carryOutTask = async ({ command: wanted, order, terminal, ...program }: Task & Program): Promise<void> => {
  const flag = new Uint8Array(program.stop);
  const streams = { out: (out: string) => send({ out }), err: (err: string) => send({ err }), terminal };
  const command = commands.find(({ name }) => name === wanted)!;
  const threads = threadsOf(program, fileURLToPath(import.meta.url));
  const code = await carryOut(command, order, streams, () => Atomics.load(flag, 0) !== 0, threads);
  send({ code });
};

const serve = async ({ job, stop }: Errand): Promise<void> => {
  const flag = new Uint8Array(stop);
  const work = await jobs[job]();
  parentPort!.on("message", (message: unknown) =>
    parentPort!.postMessage(work(message as never, () => Atomics.load(flag, 0) !== 0)),
  );
};

const data = workerData as (Task & Program) | Errand;
void ("job" in data ? serve(data) : carryOutTask(data));
