import pico from "picocolors";
import type { Output } from "./command.ts";

/** What the two streams stand on; plain data, so that it can be sent to another thread. */
export interface Terminal {
  /** Whether a line of progress can be written over. */
  readonly rewrites: boolean;
  readonly colours: boolean;
  readonly width: number;
}

/** Where everything goes; tests bring their own. */
export interface Streams {
  out(text: string): void;
  err(text: string): void;
  readonly terminal: Terminal;
}

const clearLine = "\r\u001b[K";

/** Least time between two rewritings of the line of progress, in milliseconds. */
const pause = 80;

/** `done` takes the line of progress away. */
export const outputTo = ({ out, err, terminal }: Streams): Output & { done(): void } => {
  let stageShown = "";
  let isShown = false;
  let last = Number.NEGATIVE_INFINITY;
  const clear = (): void => {
    if (isShown) err(clearLine);
    isShown = false;
  };
  const rewrite = (text: string): void => {
    if (performance.now() - last < pause) return;
    err(clearLine + text.slice(0, terminal.width - 1));
    isShown = true;
    last = performance.now();
  };
  const tellStage = (stage: string): void => {
    if (stage !== stageShown) err(`${stage}\n`);
    stageShown = stage;
  };
  const print = (write: (text: string) => void, text: string): void => {
    clear();
    write(`${text}\n`);
  };
  return {
    line: (text) => print(out, text),
    json: (value) => print(out, JSON.stringify(value)),
    note: (text) => print(err, text),
    progress: (stage, far) => (terminal.rewrites ? rewrite(far ? `${stage}: ${far}` : stage) : tellStage(stage)),
    colours: pico.createColors(terminal.colours),
    width: terminal.width,
    done: clear,
  };
};
