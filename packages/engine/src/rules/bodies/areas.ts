import { cellAt, type Place } from "../../puzzle/canvas.ts";
import type { Random } from "../../random.ts";
import type { BodyShape, Ground } from "../body.ts";
import type { Body } from "../contract.ts";
import { shown } from "../shown.ts";
import { listOf, path } from "./fields.ts";
import { shapeOf } from "./shape.ts";

/** Two areas or more, the cells of each in path order. */
export interface AreasBody extends Body {
  readonly areas: readonly (readonly Place[])[];
}

const form = "{ areas: [path, path] } or [[path, path]], the areas of each instance in a list of their own";

const cells = path();

/** The same shape in another place of the ground. */
const moved = (area: readonly Place[], random: Random, { canvas }: Ground): readonly Place[] | undefined => {
  const [from, to] = [area[0]!, random.pick(canvas.places)];
  const places = area.map(({ row, column }) => ({
    row: row + to.row - from.row,
    column: column + to.column - from.column,
  }));
  return places.every((place) => cellAt(canvas, place) !== undefined) ? places : undefined;
};

/** Two areas, of the same shape as often as not. */
const draw = (random: Random, ground: Ground): AreasBody | undefined => {
  const first = cells.draw!(random, ground);
  const second = first && (random.below(2) === 0 ? moved(first, random, ground) : cells.draw!(random, ground));
  return second && { areas: [first, second] };
};

const spec = { name: "areas", form, gesture: "sweep", fields: { areas: listOf(cells, "paths", 2) }, draw } as const;
const keyed: BodyShape<AreasBody> = shapeOf(spec);
const listed: BodyShape<AreasBody> = shapeOf({ ...spec, terse: "areas" });

const isFlat = (value: unknown): boolean =>
  typeof value === "string" || (Array.isArray(value) && value.some((item) => typeof item === "string"));

/** `[path, path]` in one list would read as two instances of one area each, so it is an error that says what is meant. */
export const areas: BodyShape<AreasBody> = {
  ...listed,
  read: (value, canvas) =>
    isFlat(value) ? [{ at: [], faults: [{ read: shown(value), right: form }] }] : listed.read(value, canvas),
  write: keyed.write,
};
