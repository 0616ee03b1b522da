import type { Options } from "../options.ts";
import { clingo } from "../peers/clingo.ts";
import { gecode } from "../peers/gecode.ts";
import { isOnPath } from "../peers/native.ts";
import { ours } from "../peers/ours.ts";
import type { Peer, Ready } from "../peers/peer.ts";
import { cadical, clasp, picosat } from "../peers/sat.ts";
import { type Case, caseIn, type Family, filesByFamily, hardClassics, seventeenGivens } from "../puzzles.ts";
import { inTurns, median, type Runner, ratio } from "../turns.ts";
import { isWanted, type Measure, type Row } from "./measure.ts";

const natives: readonly (Peer & { readonly program?: string })[] = [
  { ...gecode, program: "fzn-gecode" },
  picosat,
  cadical,
  clasp,
];

const nativePeers = ({ native }: Options): readonly Peer[] =>
  native ? natives.filter(({ name, program }) => isOnPath(program ?? name)) : [];

/** One sentence about the solvers that are asked for and not there. */
export const absent = ({ native }: Options): string | undefined => {
  const missing = natives.filter(({ name, program }) => !isOnPath(program ?? name)).map(({ name }) => name);
  return native && missing.length > 0 ? `Not on the PATH, so left out: ${missing.join(", ")}.` : undefined;
};

/** Every so-manieth of the 49,151. */
const sampled = 2000;

function* families(options: Options): Generator<Family> {
  const lists: readonly (readonly [string, () => readonly Case[]])[] = [
    ["seventeen", () => seventeenGivens(sampled)],
    ["hard", hardClassics],
    ...[...filesByFamily(options.cases)].map(([name, files]) => [name, () => files.map(caseIn)] as const),
  ];
  for (const [name, cases] of lists) {
    if (!isWanted(name, options, "soundness")) continue;
    const list = cases();
    if (list.length > 0) yield { name, cases: list };
  }
}

/** A peer over a family: its mean for a puzzle; undefined where it can't be asked about all of them. */
const runnerOf = async (
  peer: Peer,
  { name, cases }: Family,
  expected: readonly number[],
): Promise<Runner | undefined> => {
  const readies: Ready[] = [];
  for (const [k, puzzle] of cases.entries()) {
    const ready = await peer.ready(puzzle);
    if (!ready) return undefined;
    const seen = await ready.seen();
    if (expected[k] !== undefined && seen !== expected[k])
      throw new Error(`${peer.name} sees ${seen} solutions of ${puzzle.name}, we ${expected[k]} (${name})`);
    readies.push(ready);
  }
  const pass = async (): Promise<number> => {
    let sum = 0;
    for (const ready of readies) sum += await ready.pass();
    return sum / cases.length;
  };
  return { name: peer.name, pass };
};

const verdictsOf = async ({ cases }: Family): Promise<number[]> => {
  const seen: number[] = [];
  for (const puzzle of cases) seen.push(await (await ours.ready(puzzle))!.seen());
  return seen;
};

async function* rows(options: Options): AsyncGenerator<Row> {
  for (const family of families(options)) {
    const expected = await verdictsOf(family);
    const runners: Runner[] = [];
    for (const peer of [ours, clingo, ...nativePeers(options)]) {
      const runner = await runnerOf(peer, family, expected);
      if (runner) runners.push(runner);
    }
    const taken = await inTurns(runners, options.rounds);
    const own = taken.get("ours")!;
    const others = runners.slice(1).flatMap(({ name }): [string, number][] => [
      [`${name} ms`, median(taken.get(name)!)],
      [`${name} / ours`, ratio(own, taken.get(name)!)],
    ]);
    const figures = { puzzles: family.cases.length, "ours ms": median(own), ...Object.fromEntries(others) };
    yield { measure: "soundness", of: family.name, figures };
  }
}

export const soundness: Measure = {
  name: "soundness",
  about:
    "None, one or several solutions: the mean of a family's puzzles, the median of the rounds. Ours judges a compiled " +
    "board, whose layout and propagators stay from pass to pass; clingo gets its program's text ready; gecode tells its own time of search; the other native " +
    "ones run as processes, less a run on nothing. Every peer must see what we see.",
  rows,
};
