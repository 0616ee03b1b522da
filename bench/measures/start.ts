import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";
import type { Options } from "../options.ts";
import { root } from "../root.ts";
import { inTurns, median, type Runner, ratio } from "../turns.ts";
import { isWanted, type Measure, type Row } from "./measure.ts";

const program = join(root, "packages/cli/dist/solvewright.js");
const puzzle = join(root, "examples/market-stall.puzzle.yaml");
const repeats = 10;

/** Milliseconds of a shell's `times`: user and system time of the children it has waited for. */
const childrenMs = (said: string): number =>
  [
    ...said
      .trim()
      .split("\n")
      .at(-1)!
      .matchAll(/(\d+)m([\d.]+)s/g),
  ].reduce((sum, [, minutes, seconds]) => sum + Number(minutes) * 60_000 + Number(seconds) * 1000, 0);

/** CPU time of one run, of ten in one shell: a busy machine changes it less than the time on the wall. */
const cpuOf = (args: readonly string[]): number => {
  const command = [process.execPath, ...args].map((arg) => `'${arg}'`).join(" ");
  const loop = `i=0; while [ $i -lt ${repeats} ]; do ${command} >/dev/null; i=$((i+1)); done; times`;
  return childrenMs(spawnSync("sh", ["-c", loop], { encoding: "utf8" }).stdout) / repeats;
};

const starts: readonly (readonly [string, readonly string[]])[] = [
  ["node -e 0", ["-e", "0"]],
  ["solvewright --help", [program, "--help"]],
  ["solvewright check", [program, "check", puzzle]],
];

async function* rows(options: Options): AsyncGenerator<Row> {
  if (!isWanted("start", options) || !existsSync(program)) return;
  const runners = starts.map(([name, args]): Runner => ({ name, pass: () => cpuOf(args) }));
  const taken = await inTurns(runners, options.rounds);
  const bare = taken.get("node -e 0")!;
  for (const [name, times] of taken)
    yield { measure: "start", of: name, figures: { "CPU ms": median(times), "times node -e 0": ratio(bare, times) } };
}

export const start: Measure = {
  name: "start",
  about: "CPU time from start to end, of the built command (`npm run build` first; nothing is measured without it).",
  rows,
};
