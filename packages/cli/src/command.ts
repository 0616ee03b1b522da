import type pico from "picocolors";
import type { Threads } from "./threads.ts";

/** Where a command prints. What goes to `line` and `json` is its answer; progress and notes are beside it. */
export interface Output {
  line(text: string): void;
  json(value: unknown): void;
  /** For people, beside the answer. */
  note(text: string): void;
  /** What is being done, and how far it is; leaves nothing behind on a terminal, and else a line a stage. */
  progress(stage: string, far?: string): void;
  readonly colours: ReturnType<typeof pico.createColors>;
  /** Characters a line. */
  readonly width: number;
}

/** What a command is asked: the words behind its name and its flags. */
export interface Asked {
  readonly words: readonly string[];
  readonly flags: Readonly<Record<string, string | boolean | undefined>>;
  readonly out: Output;
  /** True once the user has asked to stop. */
  stopped(): boolean;
  /** Left out where the program has only this one. */
  readonly threads?: Threads;
}

/** 0 done; 1 a negative finding; 2 bad input or usage; 3 stopped. */
export type ExitCode = 0 | 1 | 2 | 3;

export type Run = (asked: Asked) => Promise<ExitCode>;

export interface Flag {
  /** "--level <n>" */
  readonly name: string;
  readonly text: string;
}

/** One command: one object, one folder, one line in the registry. */
export interface Command {
  readonly name: string;
  /** Its words: "FILE", "FILE CELL [DIGIT]". */
  readonly usage: string;
  readonly summary: string;
  readonly flags: readonly Flag[];
  readonly example: string;
  /** What it does. Loaded when it is asked for, so that help need not wait for the engine. */
  load(): Promise<{ readonly run: Run }>;
}

export const json: Flag = { name: "--json", text: "for machines" };
