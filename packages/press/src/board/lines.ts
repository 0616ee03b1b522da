import type { Draft, Grid, Point } from "@solvewright/engine";
import type { Figure, Path, Pen } from "../scene/figure.ts";
import { units } from "../tokens.ts";
import { edgeOf, gridsAcross, isBorder, type Side, sidesBetween } from "./borders.ts";
import { cornersOf, joined, moved, runsRound } from "./runs.ts";
import type { Segment } from "./segments.ts";

/** Which grid the lens holds, if any: its lines turn solid, those of the others step back. */
export type Lens = string | undefined;

const railApart = units["rail-apart"] / 2;
const dimmed = 0.25;

const straight = (segments: readonly Segment[]): Path[] => joined(segments).map((points) => ({ points }));

const drawn = (layer: Figure["layer"], paths: readonly Path[], pen: Pen, opacity?: number): Figure[] =>
  paths.length === 0 ? [] : [{ shape: "paths", layer, paths, pen, ...(opacity === undefined ? {} : { opacity }) }];

/** A grid's edge where it runs inside another grid; none of it does under the lens. */
const insideOf = (grid: Grid, { grids }: Draft, lens: Lens): Side[] =>
  lens === grid.id ? [] : edgeOf(grid).filter((side) => gridsAcross(grids, side).length > 0);

const lineKey = ({ inner, outer }: Side): string =>
  [inner, outer]
    .map(({ row, column }) => `${row},${column}`)
    .sort()
    .join(" ");

/** Cut back at each end that touches a double line, so that nothing of it stands between the rails. */
const cutBack = ([from, to]: Segment, doubled: ReadonlySet<string>): Segment => {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const by = (point: Point): number => (doubled.has(`${point} ${dx === 0}`) ? railApart : 0);
  const [start, end] = [by(from), by(to)];
  return [
    [from[0] + dx * start, from[1] + dy * start],
    [to[0] - dx * end, to[1] - dy * end],
  ];
};

const hairlines = (puzzle: Draft, lens: Lens): Figure[] => {
  const inside = puzzle.grids.flatMap((grid) => insideOf(grid, puzzle, lens));
  const doubled = new Set(inside.map(lineKey));
  const ends = new Set(
    inside.flatMap(({ line: [from, to] }) => [from, to].map((end) => `${end} ${from[1] === to[1]}`)),
  );
  const sides = sidesBetween(puzzle).filter((side) => !doubled.has(lineKey(side)));
  const lines = straight(sides.map(({ line }) => cutBack(line, ends)));
  return drawn("hair", lines, { paint: "hair", width: units.hair });
};

/** Between the rails nothing of the sheets is seen. */
const gaps = (puzzle: Draft, lens: Lens): Figure[] =>
  puzzle.grids.flatMap((grid) => {
    const inside = edgeRuns(grid, puzzle, lens).filter(({ isInside }) => isInside);
    return drawn(
      "gap",
      inside.map(({ path }) => path),
      { paint: "sheet", width: units["rail-apart"] },
    );
  });

const regionPen: Pen = { paint: "ink", width: units.region, cap: "square" };

/** The borders of a grid's regions: solid, dashed where a sheet lies above. */
const regionLines = (grid: Grid, puzzle: Draft, lens: Lens): Figure[] => {
  const above = lens === grid.id ? [] : puzzle.grids.slice(puzzle.grids.indexOf(grid) + 1);
  const own = sidesBetween(puzzle).filter((side) => gridsAcross([grid], side).length > 0 && isBorder(grid, side));
  const isBelow = (side: Side): boolean => gridsAcross(above, side).length > 0;
  const lines = (sides: readonly Side[]): Path[] => straight(sides.map(({ line }) => line));
  const opacity = dimOf(grid, lens);
  return [
    ...drawn("region", lines(own.filter((side) => !isBelow(side))), regionPen, opacity),
    ...drawn("region", lines(own.filter(isBelow)), { paint: "ink", width: units.region, dash: [0.12, 0.09] }, opacity),
  ];
};

const dimOf = (grid: Grid, lens: Lens): number | undefined =>
  lens !== undefined && lens !== grid.id ? dimmed : undefined;

interface EdgeRun {
  readonly isInside: boolean;
  readonly steps: readonly Side[];
  readonly path: Path;
}

/** A grid's edge in runs that lie all in the open or all inside another grid. */
const edgeRuns = (grid: Grid, puzzle: Draft, lens: Lens): EdgeRun[] => {
  const inside = new Set(insideOf(grid, puzzle, lens).map(lineKey));
  return runsRound(edgeOf(grid), (side) => inside.has(lineKey(side))).map(({ sort: isInside, steps, whole }) => {
    const corners = cornersOf(
      steps.map(({ line }) => line),
      whole,
    );
    return { isInside, steps, path: { points: corners, closed: whole } };
  });
};

const railsOf = ({ path: { points, closed = false } }: EdgeRun): Path[] =>
  [-railApart, railApart].map((by) => ({ points: moved(points, by, closed), closed }));

/** Ticks stand on the inner rail, every fifth of a cell, and point into the grid whose edge it is. */
const ticksOf = ({ steps }: EdgeRun): Path[] =>
  steps.flatMap(({ line: [from, to] }) => {
    const along: Point = [to[0] - from[0], to[1] - from[1]];
    const at = (share: number, inwards: number): Point => [
      from[0] + along[0] * share - along[1] * inwards,
      from[1] + along[1] * share + along[0] * inwards,
    ];
    return [0.2, 0.4, 0.6, 0.8].map((share) => ({
      points: [at(share, railApart), at(share, railApart + units["hachure-long"])],
    }));
  });

const outlines = (grid: Grid, puzzle: Draft, lens: Lens): Figure[] => {
  const runs = edgeRuns(grid, puzzle, lens);
  const inside = runs.filter(({ isInside }) => isInside);
  const open = runs.filter(({ isInside }) => !isInside);
  const opacity = dimOf(grid, lens);
  const filled = inside.flatMap(({ steps }) =>
    steps.filter((side) => gridsAcross(puzzle.grids, side).some((other) => isBorder(other, side))),
  );
  return [
    ...drawn("outline", inside.flatMap(railsOf), { paint: "ink", width: units.rail }, opacity),
    ...drawn(
      "outline",
      filled.map(({ line }) => ({ points: line })),
      { paint: "ink", width: units.region },
      opacity,
    ),
    ...drawn(
      "outline",
      open.map(({ path }) => path),
      { paint: "ink", width: units.outline, cap: "square" },
      opacity,
    ),
    ...drawn("outline", inside.flatMap(ticksOf), { paint: "ink", width: units.hachure }, opacity),
  ];
};

/** Every line of the grids themselves: hairlines, regions, edges in the open and inside another. */
export const lineFigures = (puzzle: Draft, lens?: Lens): Figure[] => [
  ...gaps(puzzle, lens),
  ...hairlines(puzzle, lens),
  ...puzzle.grids.flatMap((grid) => regionLines(grid, puzzle, lens)),
  ...puzzle.grids.flatMap((grid) => outlines(grid, puzzle, lens)),
];
