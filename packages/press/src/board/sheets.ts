import { type Canvas, outlineOf, type Place, type Point } from "@solvewright/engine";
import type { Figure } from "../scene/figure.ts";
import type { Colour } from "../tokens.ts";

const sheets = ["sheet", "sheet-2", "sheet-3"] as const satisfies readonly Colour[];

/** One path round all of these cells, so that no seam shows between them. */
export const areaOf = (places: readonly Place[]) =>
  ({ shape: "paths", paths: outlineOf(places).map((points) => ({ points, closed: true })) }) as const;

const atLeast = ({ places, grids }: Canvas, depth: number): Place[] =>
  places.filter((_, cell) => grids[cell]!.length >= depth);

/** Sheets of tracing paper: the more of them lie on each other, the darker. */
export const sheetFigures = (canvas: Canvas): Figure[] =>
  sheets.flatMap((fill, k): Figure[] => {
    const places = atLeast(canvas, k + 1);
    return places.length === 0 ? [] : [{ ...areaOf(places), layer: "sheet", fill }];
  });

/** The sheet that shows at a point; between cells the lightest of theirs, the page outside. */
export const sheetAt = ({ places, grids }: Canvas, [x, y]: Point): Colour => {
  const touches = ({ row, column }: Place): boolean =>
    Math.abs(column - 0.5 - x) <= 0.51 && Math.abs(row - 0.5 - y) <= 0.51;
  const depths = places.flatMap((place, cell) => (touches(place) ? [grids[cell]!.length] : []));
  return depths.length === 0 ? "page" : sheets[Math.min(3, ...depths) - 1]!;
};
