import { crossed } from "../../marks/crossed.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import type { Grid } from "../../puzzle/puzzle.ts";
import { counted, listed } from "../../speech/english/counts.ts";
import { becauseOfBalance, othersThat, type Side } from "../because/balance.ts";
import { type PathInBody, pathsIn } from "../bodies/path.ts";
import { writePath } from "../bodies/path-text.ts";
import { type Fault, type Faulty, faulty, type Kind, type Setting } from "../contract.ts";
import { haveCommon } from "../in-balance.ts";
import { endsOf, type Line, lineOf, pairsOf, stepsOf, tiesOf } from "../line.ts";
import { sumsOf } from "../reachable.ts";
import { mayNotRepeat } from "../readings.ts";
import { asMuchAs, asMuchAsTerm } from "../sums.ts";

interface RegionSumLine extends Line {
  /** The pieces into which the borders of regions cut the line. */
  readonly runs: readonly (readonly Cell[])[];
  /** The last cell of each but the last, by its place on the line. */
  readonly cuts: readonly number[];
  /** What a region of the grid is called, and the grid itself where there are several. */
  readonly region: string;
  readonly of: string;
}

const holds = (grid: Grid, cell: Cell, { canvas, grids }: Setting): boolean =>
  canvas.grids[cell]!.includes(grids.indexOf(grid));

/** The one grid with regions that holds the whole line (and is the one that is named), or why it can't be told. */
const gridOf = ({ cells: places, grid: id }: PathInBody, { cells }: Line, setting: Setting): Grid | Faulty => {
  const all = setting.grids.filter((grid) => grid.regions && cells.every((cell) => holds(grid, cell, setting)));
  const named = id === undefined ? all : all.filter((grid) => grid.id === id);
  if (named.length === 1) return named[0]!;
  const which = listed(
    all.map((grid) => grid.id),
    "or",
  );
  if (all.length === 0)
    return faulty({ at: ["cells"], read: writePath(places), right: "a line inside one grid that has regions" });
  if (id === undefined) return faulty({ read: writePath(places), right: `{ cells, grid }, the grid being ${which}` });
  return faulty({ at: ["grid"], read: id, right: `a grid with regions that holds the whole line: ${which}` });
};

const regionAt = ({ regions, size, row, column }: Grid, cell: Cell, { canvas }: Setting): string => {
  const place = canvas.places[cell]!;
  return regions![(place.row - row) * size + place.column - column]!;
};

/** Cuts the list behind each of these places. */
const cutAt = <T>(list: readonly T[], cuts: readonly number[]): T[][] =>
  [...cuts, list.length - 1].map((cut, k) => list.slice(k === 0 ? 0 : cuts[k - 1]! + 1, cut + 1));

/** Runs that can't come to one sum. */
const unequal = (runs: RegionSumLine["runs"], { domains, canvas }: Setting): Fault | undefined => {
  const sums = runs.map((run) => sumsOf(run.map((cell) => domains[cell]!)));
  if (haveCommon(sums)) return undefined;
  const reach = runs.map((run, k) => `${sums[k]!.at(0)} to ${sums[k]!.at(-1)} from ${canvas.names[run[0]!]} on`);
  return {
    at: ["cells"],
    read: `${counted(runs.length)} runs`,
    right: `runs that can have one sum; these reach ${listed(reach)}`,
  };
};

export const regionSumLine: Kind<PathInBody, RegionSumLine> = {
  name: "region-sum-line",
  body: pathsIn({ least: 1 }),
  resolve: (body, setting) => {
    const line = lineOf(body.cells, setting);
    const grid = gridOf(body, line, setting);
    if ("faults" in grid) return grid;
    const regions = line.cells.map((cell) => regionAt(grid, cell, setting));
    const cuts = stepsOf(regions).flatMap(([before, after], k) => (before === after ? [] : [k]));
    const runs = cutAt(line.cells, cuts);
    const fault = unequal(runs, setting);
    const of = setting.grids.length === 1 ? "" : ` of ${grid.called}`;
    return fault ? faulty(fault) : { ...line, runs, cuts, region: grid.box ? "box" : "region", of };
  },
  scopes: ({ runs }) => stepsOf(runs).map(([first, second]) => asMuchAs(first, second)),
  terms: ({ id, runs }) => tiesOf(runs).map(([first, second]) => asMuchAsTerm(id, first, second)),
  marks: ({ points, cuts }) => crossed(points, cuts),
  words: ({ cells, region, of }) => ({
    rule: `The ${region} borders${of} cut a ${region} sum line into pieces. All pieces of one line add up to the same number. A line that comes back to a ${region} starts a new piece there.`,
    title: `${region === "box" ? "Box" : "Region"} sum lines`,
    noun: `${region} sum line`,
    plural: `${region} sum lines`,
    at: endsOf(cells),
    holds: `add up to the same in every ${region}`,
  }),
  because: ({ runs }, asked) => {
    const sides = runs.map((cells): Side => {
      const makes = cells.length === 1 ? "is" : "makes";
      return { cells, makes: `another piece ${makes}`, rest: othersThat("of this piece") };
    });
    return becauseOfBalance(pairsOf(sides), asked);
  },
  alsoSaid: ["sum line", "same sum", "equal sum", "same total"],
  readings: [mayNotRepeat("digits on a region sum line don't repeat", ({ cells }) => cells)],
  relabels: "none",
};
