/** Where a command prints; `progress` is shown while it works and leaves nothing behind. */
export interface Output {
  line(text: string): void;
  json(value: unknown): void;
  progress(text: string): void;
}

/** What a command is asked: the words behind its name and its flags. */
export interface Asked {
  readonly words: readonly string[];
  readonly flags: Readonly<Record<string, string | boolean | undefined>>;
  readonly out: Output;
  /** True once the user has asked to stop. */
  stopped(): boolean;
}

/** 0 done; 1 a negative finding; 2 bad input or usage; 3 stopped. */
export type ExitCode = 0 | 1 | 2 | 3;

/** One command: one object, one file, one line in the registry. */
export interface Command {
  readonly name: string;
  /** Its words: "FILE", "FILE CELL [DIGIT]". */
  readonly usage: string;
  readonly summary: string;
  readonly flags: readonly { readonly name: string; readonly text: string }[];
  readonly example: string;
  run(asked: Asked): Promise<ExitCode>;
}

/** A wrong use of a command: told in a sentence, exit code 2. */
export class UsageError extends Error {}
