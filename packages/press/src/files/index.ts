/** What goes out with a show and needs Node to be made: pictures as PNG, and the whole list of a pack's files. */
export { besleyCss } from "./besley.ts";
export { type PicturesAsked, picturesAsked } from "./pictures.ts";
export { packFiles } from "./registry.ts";
