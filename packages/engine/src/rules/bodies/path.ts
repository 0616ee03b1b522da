import type { Place } from "../../puzzle/canvas.ts";
import type { BodyShape } from "../body.ts";
import type { Body } from "../contract.ts";
import { optional, path, text, whole } from "./fields.ts";
import { shapeOf } from "./shape.ts";

/** A line: each cell touches the one before by side or corner; the order is the file's. */
export interface PathBody extends Body {
  readonly cells: readonly Place[];
}
/** As `PathBody`, with a number that the kind gives a meaning. */
export interface PathByBody extends PathBody {
  readonly by?: number;
}
/** As `PathBody`; `grid` is the id of the grid whose houses are meant, where the line lies in several. */
export interface PathInBody extends PathBody {
  readonly grid?: string;
}
export interface PathSumBody extends PathBody {
  readonly sum: number;
}

/** How many cells the line has at least. */
interface Least {
  readonly least: number;
}

export const paths = ({ least }: Least): BodyShape<PathBody> =>
  shapeOf({
    name: "path",
    form: "a path, a list of paths, or { cells }",
    gesture: "drag",
    terse: "cells",
    fields: { cells: path({ least, beside: "corner" }) },
  });

/** `leastBy`: the least number that `by` may be. */
export const pathsBy = ({ least, leastBy }: Least & { readonly leastBy: number }): BodyShape<PathByBody> =>
  shapeOf({
    name: "path by",
    form: "a path, a list of paths, or { cells, by }",
    gesture: "drag",
    terse: "cells",
    fields: { cells: path({ least, beside: "corner" }), by: optional(whole({ least: leastBy })) },
  });

export const pathsIn = ({ least }: Least): BodyShape<PathInBody> =>
  shapeOf({
    name: "path in a grid",
    form: "a path, a list of paths, or { cells, grid }",
    gesture: "drag",
    terse: "cells",
    fields: { cells: path({ least, beside: "corner" }), grid: optional(text("the id of a grid")) },
  });

export const pathSum = ({ least }: Least): BodyShape<PathSumBody> =>
  shapeOf({
    name: "path with a sum",
    form: "{ cells, sum }, or a list of them",
    gesture: "drag",
    fields: { cells: path({ least, beside: "corner" }), sum: whole() },
  });
