import {
  type About,
  type Board,
  centre,
  distance,
  outlineOf,
  type Part,
  type Place,
  type Point,
} from "@solvewright/engine";
import type { Badge } from "../board/badges.ts";
import { placesNamed, placesOf } from "../board/subject.ts";
import { extentOf, together } from "../scene/extent.ts";
import type { Figure } from "../scene/figure.ts";

/** A reason of a line, or what follows, and its letter. */
export interface LetteredReason {
  readonly letter: string;
  readonly of: About | { readonly so: string };
}

/** The reasons of a line in the order in which it speaks of them: a, b, c. What is spoken of again keeps its letter. */
export const lettersOf = (parts: readonly Part[]): LetteredReason[] => {
  const spoken = parts.flatMap(({ role, of }) => (role === "because" && of ? [of] : []));
  const distinct = new Map(spoken.map((of) => [JSON.stringify(of), of]));
  return [...distinct.values()].map((of, k) => ({ letter: String.fromCharCode(97 + k), of }));
};

const placesOfGrid = ({ puzzle }: Board, id: string): Place[] => {
  const { places, grids } = puzzle.canvas;
  const index = puzzle.grids.findIndex((grid) => grid.id === id);
  return places.filter((_, cell) => grids[cell]!.includes(index));
};

/** The corners and the middles of the sides along an outline. */
const alongOutline = (places: readonly Place[], inset: number): Point[] =>
  outlineOf(places, inset).flatMap((loop) =>
    loop.flatMap((from, k): Point[] => {
      const to = loop[(k + 1) % loop.length]!;
      const halves = Math.max(1, Math.round(2 * Math.max(Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1]))));
      return Array.from({ length: halves }, (_, h) => [
        from[0] + ((to[0] - from[0]) * h) / halves,
        from[1] + ((to[1] - from[1]) * h) / halves,
      ]);
    }),
  );

/** The nearest to the middle of the right side first: there a note in the margin is near. */
const rightFirst = (points: readonly Point[]): Point[] => {
  const right = Math.max(...points.map(([x]) => x));
  const heights = points.filter(([x]) => x === right).map(([, y]) => y);
  const best: Point = [right, (Math.min(...heights) + Math.max(...heights)) / 2];
  return [...points].sort((a, b) => distance(a, best) - distance(b, best));
};

const round = ([x, y]: Point, away: number): Point[] =>
  [-90, 0, 180, 90, -45, -135, 45, 135].map((degrees) => {
    const angle = (degrees * Math.PI) / 180;
    return [x + away * Math.cos(angle), y + away * Math.sin(angle)];
  });

const besideRule = (figures: readonly Figure[], cells: readonly Place[]): Point[] => {
  const layers = new Set(figures.map(({ layer }) => layer));
  if (layers.has("cage")) return alongOutline(cells, 0.03);
  if (layers.has("line") || layers.has("area"))
    return cells.length === 0 ? [] : [cells[0]!, cells.at(-1)!].flatMap((cell) => round(centre(cell), 0.55));
  const extent = together(figures.map(extentOf));
  if (!extent) return [];
  const at: Point = [(extent.left + extent.right) / 2, (extent.top + extent.bottom) / 2];
  return round(at, Math.max(extent.right - extent.left, extent.bottom - extent.top) / 2 + 0.44);
};

/** The badge of a lettered reason and where it may stand. */
export const badgeOf = (
  { letter, of }: LetteredReason,
  board: Board,
  figuresOfRule: (id: string) => readonly Figure[],
): Badge => {
  if ("cells" in of) return { letter, kind: "cell", places: rightFirst(alongOutline(placesNamed(of.cells), 0)) };
  if ("so" in of) return { letter, kind: "so", places: rightFirst(alongOutline(placesNamed([of.so]), 0)) };
  if ("grid" in of) return { letter, kind: "cell", places: rightFirst(alongOutline(placesOfGrid(board, of.grid), 0)) };
  if ("house" in of)
    return { letter, kind: "cell", places: rightFirst(alongOutline(placesOf(board, of.house), -0.09)) };
  return { letter, kind: "rule", places: besideRule(figuresOfRule(of.rule), placesOf(board, of.rule)) };
};
