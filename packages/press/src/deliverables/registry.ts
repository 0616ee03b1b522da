import { captionsSrt, captionsVtt, draftSrt, draftVtt } from "./captions.ts";
import { chapters } from "./chapters.ts";
import { cutList } from "./cut-list.ts";
import { description } from "./description.ts";
import { letterToSetters, noteToSetters } from "./letters-to-setters.ts";
import { moments } from "./moments.ts";
import { asSvg, puzzlePicture, solutionPicture } from "./pictures.ts";
import { rulesText } from "./rules-text.ts";
import { scriptHtml } from "./script/script-html.ts";
import { script } from "./script.ts";
import type { Deliverable } from "./show.ts";
import { suggestions } from "./suggestions.ts";
import { tryIt } from "./try-it.ts";
import { walkthrough } from "./walkthrough/walkthrough.ts";
import { walkthroughHtml } from "./walkthrough/walkthrough-html.ts";

/** Every text, picture and page that goes out with a show, in the order in which it is wanted. */
export const deliverables: readonly Deliverable[] = [
  script,
  scriptHtml,
  rulesText,
  description,
  suggestions,
  chapters,
  captionsVtt,
  captionsSrt,
  draftVtt,
  draftSrt,
  moments,
  cutList,
  walkthrough,
  walkthroughHtml,
  tryIt,
  letterToSetters,
  noteToSetters,
  asSvg(puzzlePicture),
  asSvg(solutionPicture),
];
