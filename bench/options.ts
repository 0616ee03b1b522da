import { existsSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { root } from "./root.ts";

export interface Options {
  /** Only measures and families whose name begins so. */
  readonly only: string;
  readonly json: boolean;
  /** Tables for docs/performance.md. */
  readonly markdown: boolean;
  readonly rounds: number;
  /** The folder of puzzles. */
  readonly cases: string;
  /** Asks the solvers on the PATH too. */
  readonly native: boolean;
}

const besideUs = join(root, "../shared/cases");

export const help = `Measures Solvewright against general-purpose solvers, in turns, as ratios.

  npm run bench -- [--only NAME] [--rounds N] [--cases DIR] [--native] [--json | --markdown]

  --only NAME    only measures and families whose name begins so, as killer, count, page, start
  --rounds N     so many rounds, of which the median counts (5)
  --cases DIR    the folder of puzzles (${"../shared/cases"} where it is there, else examples)
  --native       also gecode, picosat, cadical and clasp, where they are on the PATH
  --json         one JSON object a line
  --markdown     tables, as docs/performance.md keeps them
`;

/** What the command line asks for; undefined when it asks for help. */
export const optionsFrom = (args: readonly string[]): Options | undefined => {
  const { values } = parseArgs({
    args: [...args],
    options: {
      only: { type: "string", default: "" },
      json: { type: "boolean", default: false },
      markdown: { type: "boolean", default: false },
      rounds: { type: "string", default: "5" },
      cases: { type: "string", default: existsSync(besideUs) ? besideUs : join(root, "examples") },
      native: { type: "boolean", default: false },
      help: { type: "boolean", default: false },
    },
  });
  const rounds = Number(values.rounds);
  if (!Number.isInteger(rounds) || rounds < 1) throw new Error("--rounds wants a whole number from 1");
  return values.help ? undefined : { ...values, rounds };
};
