import { centre, distance, type Place, type Point } from "@solvewright/engine";
import { type Extent, extentOf, grown, middleOf, shared, together } from "../scene/extent.ts";
import type { Figure } from "../scene/figure.ts";
import { movedTo } from "../scene/moved.ts";

/** What one clue draws, and the cells that it speaks of. */
export interface Drawn {
  readonly figures: readonly Figure[];
  readonly cells: readonly Place[];
}

const apart = 0.06;
/** Further out than this many steps nothing is looked for. */
const mostSteps = 40;
const mostAside = 0.7;

const outsideOf = ({ figures }: Drawn): Figure[] => figures.filter(({ layer }) => layer === "outside");

/** One step straight out from the nearest cell, or undefined for what stands at a corner, along a diagonal. */
const outwards = (extent: Extent, cells: readonly Place[]): Point | undefined => {
  const [x, y] = middleOf(extent);
  const nearest = cells.map(centre).sort((a, b) => distance(a, [x, y]) - distance(b, [x, y]))[0];
  if (!nearest) return undefined;
  const [right, down] = [x - nearest[0], y - nearest[1]];
  if (Math.min(Math.abs(right), Math.abs(down)) > Math.max(Math.abs(right), Math.abs(down)) / 2) return undefined;
  return Math.abs(right) > Math.abs(down) ? [Math.sign(right), 0] : [0, Math.sign(down)];
};

const at = ({ left, top, right, bottom }: Extent, [x, y]: Point): Extent => ({
  left: left + x,
  top: top + y,
  right: right + x,
  bottom: bottom + y,
});

const boxOf = ({ row, column }: Place): Extent => ({ left: column - 1, top: row - 1, right: column, bottom: row });
const isFree = (extent: Extent, taken: readonly Extent[]): boolean =>
  taken.every((other) => shared(extent, other) === 0);

/** Steps out; aside where it stands among the cells of another grid, for beyond that grid it would be read as that one's. */
const waysOut = (extent: Extent, [x, y]: Point, places: readonly Place[]): Point[] => {
  const steps = Array.from({ length: mostSteps }, (_, k) => (k + 1) * apart);
  if (!isFree(extent, places.map(boxOf)))
    return steps.filter((far) => far <= mostAside).map((far) => [Math.abs(y) * far, Math.abs(x) * far]);
  return steps.map((far): Point => [x * far, y * far]).filter((by) => isFree(at(extent, by), places.map(boxOf)));
};

/** Where it has to go to stand clear of what is taken; nowhere where there is no such place. */
const wayOut = (extent: Extent, out: Point, taken: readonly Extent[], places: readonly Place[]): Point => {
  if (isFree(extent, taken)) return [0, 0];
  const clear = grown(extent, apart / 2);
  return waysOut(extent, out, places).find((by) => isFree(at(clear, by), taken)) ?? [0, 0];
};

/** Clues that would stand on each other beside the grid, the later ones moved out; those at a corner keep their place. */
export const withRoomOutside = (drawn: readonly Drawn[], places: readonly Place[]): Figure[] => {
  const all = drawn.map((clue) => {
    const extent = together(outsideOf(clue).map(extentOf));
    return { clue, extent, out: extent && outwards(extent, clue.cells) };
  });
  const taken = all.flatMap(({ extent, out }) => (extent && !out ? [extent] : []));
  return all.flatMap(({ clue, extent, out }) => {
    if (!extent || !out) return clue.figures;
    const by = wayOut(extent, out, taken, places);
    taken.push(at(extent, by));
    return by[0] === 0 && by[1] === 0
      ? clue.figures
      : clue.figures.map((figure) => (figure.layer === "outside" ? movedTo(figure, by) : figure));
  });
};
