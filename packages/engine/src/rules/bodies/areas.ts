import type { Place } from "../../puzzle/canvas.ts";
import type { BodyShape } from "../body.ts";
import type { Body } from "../contract.ts";
import { shown } from "../shown.ts";
import { listOf, path } from "./fields.ts";
import { shapeOf } from "./shape.ts";

/** Two areas or more, the cells of each in path order. */
export interface AreasBody extends Body {
  readonly areas: readonly (readonly Place[])[];
}

const form = "{ areas: [path, path] } or [[path, path]], the areas of each instance in a list of their own";
const spec = { name: "areas", form, gesture: "sweep", fields: { areas: listOf(path(), "paths", 2) } } as const;
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
