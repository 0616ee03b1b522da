import { type Picture, purposeOf } from "../deliverables/pictures.ts";
import type { Deliverable } from "../deliverables/show.ts";
import { pngOf } from "./png-of.ts";

/** The picture as PNG, for wherever SVG is not taken. */
export const asPng = (picture: Picture): Deliverable => ({
  name: `${picture.name}.png`,
  purpose: purposeOf(picture, "for wherever SVG is not taken"),
  needs: ["consent"],
  make: (show) => pngOf(picture.svg(show, { cell: 96, setting: "static" })),
});
