import { carryOut } from "../src/carry-out.ts";
import { run } from "../src/runner.ts";
import type { Threads } from "../src/threads.ts";

/** Runs the command line as a user does; what it said and its exit code. `said` may be read while it runs. */
export const asked = async (
  args: readonly string[],
  stopped = () => false,
  threads?: Threads,
  said: { readonly out: string[]; readonly err: string[] } = { out: [], err: [] },
) => {
  const streams = {
    out: (text: string) => void said.out.push(text),
    err: (text: string) => void said.err.push(text),
    terminal: { rewrites: false, colours: false, width: 100 },
  };
  const code = await run(args, streams, (command, order) => carryOut(command, order, streams, stopped, threads));
  return { code, out: said.out.join(""), err: said.err.join("") };
};
