import { type Digits, max } from "../../board/digits.ts";
import { rails } from "../../marks/rails.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import type { State } from "../../terms/term.ts";
import { domainsIn } from "../area.ts";
import { type PathSumBody, pathSum } from "../bodies/path.ts";
import { faulty, type Kind } from "../contract.ts";
import { isFeasible } from "../feasible.ts";
import { endsOf, type Line, lineOf } from "../line.ts";

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

/** The number nearest to this one that the line can be cut into. */
const nearest = (wanted: number, domains: readonly Digits[], does: (sum: number) => boolean): number | undefined => {
  const most = domains.reduce((sum, domain) => sum + max(domain), 0);
  const all = Array.from({ length: most + 1 }, (_, sum) => sum);
  return all.sort((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted)).find(does);
};

export const sumLine: Kind<PathSumBody, SumLine> = {
  name: "sum-line",
  body: pathSum({ least: 1 }),
  resolve: ({ cells: places, sum }, setting) => {
    const line = lineOf(places, setting);
    const does = (other: number): boolean => isFeasible([inRuns(line.cells, other)], setting);
    if (does(sum)) return { ...line, sum };
    const near = nearest(sum, domainsIn(setting, line), does);
    return faulty({
      at: ["sum"],
      read: String(sum),
      right: `a sum that runs of its digits can have; the nearest is ${near}`,
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
  relabels: "none",
};
