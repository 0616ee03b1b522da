import type { Asked, Command } from "./command.ts";
import { BadInput } from "./faults.ts";
import { outputTo, type Streams } from "./output.ts";
import type { Threads } from "./threads.ts";
import { withoutPassword } from "./without-password.ts";

/** A fault of ours, by the usual number for it (sysexits.h, EX_SOFTWARE). */
const ourFault = 70;

const apology = (error: unknown): string =>
  `This is a fault in Solvewright, not in what you did. Please send us these lines and the puzzle file, so that it can be mended.\n${
    error instanceof Error ? error.stack : error
  }`;

/** Tells what went wrong; gives back the exit code. */
export const tell = (error: unknown, asksJson: boolean, { out, err }: Streams): number => {
  const print = (write: (text: string) => void, text: string): void => write(`${withoutPassword(text)}\n`);
  if (!(error instanceof BadInput)) {
    print(err, apology(error));
    return ourFault;
  }
  if (asksJson) print(out, JSON.stringify({ problems: error.problems }));
  else print(err, error.message);
  return 2;
};

/** What is asked of a command, as plain data. */
export interface Order {
  readonly words: Asked["words"];
  readonly flags: Asked["flags"];
}

/** Runs a command and tells what goes wrong; gives back the exit code. */
export const carryOut = async (
  command: Command,
  { words, flags }: Order,
  streams: Streams,
  stopped: () => boolean,
  threads?: Threads,
): Promise<number> => {
  const out = outputTo(streams);
  try {
    const { run } = await command.load();
    return await run({ words, flags, out, stopped, ...(threads ? { threads } : {}) });
  } catch (error) {
    out.done();
    return tell(error, flags.json === true, streams);
  } finally {
    out.done();
  }
};
