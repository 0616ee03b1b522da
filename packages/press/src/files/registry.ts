import { coverPicture, puzzlePicture, solutionPicture } from "../deliverables/pictures.ts";
import { deliverables } from "../deliverables/registry.ts";
import type { Deliverable } from "../deliverables/show.ts";
import { asPng } from "./pictures.ts";
import { cueCards, scriptPdf } from "./scripts.ts";
import { sheets } from "./sheets.ts";

/** Every file that goes out with a show, in the order in which it is wanted: the texts, and what needs Node to be made. */
export const packFiles: readonly Deliverable[] = [
  asPng(puzzlePicture),
  asPng(coverPicture, "1280 by 720"),
  ...deliverables,
  asPng(solutionPicture),
  scriptPdf,
  cueCards,
  ...sheets,
];
