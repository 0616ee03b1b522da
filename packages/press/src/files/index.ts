/** What goes out with a show and needs Node to be made: pictures as PNG, and the whole list of a pack's files. */

export type { Booklet, BookletPuzzle } from "../deliverables/sheet/booklet-pages.ts";
export { besleyCss } from "./besley.ts";
export { bookletPdf, paperNamed, paperNames } from "./booklet.ts";
export { type PicturesAsked, picturesAsked } from "./pictures.ts";
export { pngOf } from "./png-of.ts";
export { packFiles } from "./registry.ts";
