/** The thread that does the work: one command, then its exit code. */
import { parentPort, workerData } from "node:worker_threads";
import { carryOut, type Order } from "./carry-out.ts";
import type { Terminal } from "./output.ts";
import { commands } from "./registry.ts";

export interface Task {
  readonly command: string;
  readonly order: Order;
  readonly terminal: Terminal;
  /** One byte, set once the user asks to stop: seen even while the work never pauses. */
  readonly stop: SharedArrayBuffer;
}

export type Message = { readonly out: string } | { readonly err: string } | { readonly code: number };

const { command, order, terminal, stop } = workerData as Task;
const flag = new Uint8Array(stop);
const send = (message: Message): void => parentPort!.postMessage(message);
const streams = { out: (out: string) => send({ out }), err: (err: string) => send({ err }), terminal };

void carryOut(commands.find(({ name }) => name === command)!, order, streams, () => Atomics.load(flag, 0) !== 0).then(
  (code) => send({ code }),
);
