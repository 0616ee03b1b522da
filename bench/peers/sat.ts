import { spawnSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { type Cnf, cnfOf, dimacs } from "./cnf.ts";
import { isOnPath, scratch, shellMs } from "./native.ts";
import type { Peer, Seen } from "./peer.ts";

const fileOf = (name: string, cnf: Cnf): string => {
  const file = join(scratch(), `${name}.cnf`);
  writeFileSync(file, dimacs(cnf));
  return file;
};

/** Solved once, then once more without the solution found. */
const twice = (program: string, name: string, cnf: Cnf): { seen: Seen; files: readonly string[] } => {
  const first = fileOf(name, cnf);
  const { status, stdout } = spawnSync(program, [first], { encoding: "utf8" });
  if (status !== satisfiable) return { seen: 0, files: [first] };
  const held = new Set([...stdout.matchAll(/^v (.*)$/gm)].flatMap(([, list]) => list!.split(" ").map(Number)));
  const found = cnf.of.flatMap((digits) => [...digits.values()].filter((variable) => held.has(variable)));
  const second = fileOf(`${name}.other`, { ...cnf, clauses: [...cnf.clauses, found.map((variable) => -variable)] });
  return { seen: spawnSync(program, [second]).status === satisfiable ? 2 : 1, files: [first, second] };
};

const satisfiable = 10;
const nothing: Cnf = { variables: 1, clauses: [[1]], of: [] };

/** A SAT solver's whole runs, less as many runs on nothing. */
const solver = (program: string): Peer => ({
  name: program,
  ready: ({ name, board }) => {
    if (!isOnPath(program)) return undefined;
    const { seen, files } = twice(program, name, cnfOf(board));
    const idle = fileOf("nothing", nothing);
    const runs = files.map((file) => `${program} ${file} >/dev/null`).join("; ");
    const idling = files.map(() => `${program} ${idle} >/dev/null`).join("; ");
    return { seen: () => seen, pass: () => Math.max(0, shellMs(runs) - shellMs(idling)) };
  },
});

export const picosat = solver("picosat");
export const cadical = solver("cadical");

/** Clasp counts for itself: one run for two models, less a run on nothing. */
export const clasp: Peer = {
  name: "clasp",
  ready: ({ name, board }) => {
    if (!isOnPath("clasp")) return undefined;
    const file = fileOf(name, cnfOf(board));
    const idle = fileOf("nothing", nothing);
    const said = (): string => spawnSync("clasp", ["-n", "2", file], { encoding: "utf8" }).stdout;
    return {
      seen: () => Number(/Models\s*: (\d+)/.exec(said())![1]) as Seen,
      pass: () => Math.max(0, shellMs(`clasp -n 2 ${file} >/dev/null`) - shellMs(`clasp -n 2 ${idle} >/dev/null`)),
    };
  },
};
