import { type Digits, listOf, max, min } from "../../board/digits.ts";
import { rails } from "../../marks/rails.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { aDigit } from "../../speech/english/counts.ts";
import type { State } from "../../terms/term.ts";
import { domainsIn } from "../area.ts";
import { forAll } from "../because/known-sums.ts";
import { type PathSumBody, pathSum } from "../bodies/path.ts";
import { faulty, type Kind } from "../contract.ts";
import { endsOf, type Line, lineOf } from "../line.ts";
import { mayNotRepeat } from "../readings.ts";

interface SumLine extends Line {
  readonly sum: number;
}

/** The state is what the run at hand adds up to; a run that has reached the sum is done, zeros behind it are its own. */
const inRuns = (cells: readonly Cell[], sum: number) => ({
  cells,
  start: 0 as State,
  next: (state: State, digit: number): State | undefined => {
    const before = state === sum && digit > 0 ? 0 : (state as number);
    return before + digit <= sum ? before + digit : undefined;
  },
  ok: (state: State) => state === sum,
});

const mostOf = (domains: readonly Digits[]): number => domains.reduce((sum, domain) => sum + max(domain), 0);

/** Whether some digits of the cells split so: what the run at hand can add up to, as bits. */
const canSplit = (domains: readonly Digits[], sum: number): boolean => {
  if (sum > mostOf(domains)) return false;
  const room = (1n << BigInt(sum + 1)) - 1n;
  let runs = 1n;
  for (const domain of domains) {
    const isDone = runs >> BigInt(sum) === 1n;
    let further = 0n;
    for (const digit of listOf(domain)) {
      further |= runs << BigInt(digit);
      if (isDone && digit > 0) further |= 1n << BigInt(digit);
    }
    runs = further & room;
  }
  return runs >> BigInt(sum) === 1n;
};

/** Cells that are looked at, all in all, for a number that a line can be cut into. */
const mostLooks = 50_000;

/** The number nearest to this one that the line can be cut into, if it is near enough to be found. */
const nearest = (wanted: number, domains: readonly Digits[]): number | undefined => {
  const all = Array.from({ length: mostOf(domains) + 1 }, (_, sum) => sum);
  const near = all.sort((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted));
  return near.slice(0, mostLooks / domains.length).find((sum) => canSplit(domains, sum));
};

export const sumLine: Kind<PathSumBody, SumLine> = {
  name: "sum-line",
  body: pathSum({ least: 1 }),
  resolve: ({ cells: places, sum }, setting) => {
    const line = lineOf(places, setting);
    const domains = domainsIn(setting, line);
    if (canSplit(domains, sum)) return { ...line, sum };
    const near = nearest(sum, domains);
    return faulty({
      at: ["sum"],
      read: String(sum),
      right: `a sum that runs of its digits can have${near === undefined ? "" : `; the nearest is ${near}`}`,
    });
  },
  scopes: ({ cells, sum }) => [inRuns(cells, sum)],
  terms: ({ id, cells, sum }) => [{ term: "automaton", owner: id, ...inRuns(cells, sum) }],
  marks: ({ points, sum }) => rails(points, String(sum)),
  words: ({ cells, sum }) => ({
    rule: "A sum line splits into runs of neighbouring cells, with no cell left over. Every run adds up to the number on the line. There may be just one run.",
    title: "Sum lines",
    noun: "sum line",
    plural: "sum lines",
    called: `sum line of ${sum}`,
    at: endsOf(cells),
    holds: `split into runs that add up to ${sum}`,
  }),
  because: ({ sum }, asked) =>
    forAll(asked, (_, out) => (min(out) > sum ? `${aDigit(min(out))} alone is already more than ${sum}` : undefined)),
  alsoSaid: ["split", "segment", "contiguous"],
  readings: [mayNotRepeat("digits on a sum line don't repeat", ({ cells }) => cells)],
  relabels: "none",
};
