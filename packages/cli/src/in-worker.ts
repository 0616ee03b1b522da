import { Worker } from "node:worker_threads";
import { tell } from "./carry-out.ts";
import type { Launch } from "./runner.ts";
import type { Message, Task } from "./worker.ts";

/** How long the work may take to notice that it should stop, in milliseconds. */
const grace = 2000;

const stopped = 3;

/**
 * Has the work done in a thread of its own, so that Ctrl-C is heard at any time: the first asks it to say what it knows
 * and end, a second ends it at once. `program` is the file that is started as a thread.
 */
export const inWorker =
  (program: string): Launch =>
  (command, order, streams) =>
    new Promise((resolve) => {
      const task: Task = { command: command.name, order, terminal: streams.terminal, stop: new SharedArrayBuffer(1) };
      const worker = new Worker(program, { workerData: { ...task, program } });
      const end = (code: number): void => {
        process.off("SIGINT", interrupt);
        void worker.terminate();
        resolve(code);
      };
      const interrupt = (): void => {
        if (Atomics.exchange(new Uint8Array(task.stop), 0, 1) === 1) end(stopped);
        else setTimeout(() => end(stopped), grace).unref();
      };
      process.on("SIGINT", interrupt);
      worker.on("message", (message: Message) => {
        if ("out" in message) streams.out(message.out);
        else if ("err" in message) streams.err(message.err);
        else end(message.code);
      });
      worker.on("error", (error) => end(tell(error, false, streams)));
    });
