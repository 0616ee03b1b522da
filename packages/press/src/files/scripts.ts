import { cueCardPages } from "../deliverables/script/cue-cards.ts";
import { scriptPages } from "../deliverables/script/script-pages.ts";
import type { Deliverable } from "../deliverables/show.ts";
import { pdfOf } from "./pdf-of.ts";
import { aboutShow } from "./sheets.ts";

export const scriptPdf: Deliverable = {
  name: "script.pdf",
  purpose: "The script in large type to print, on A4 or Letter alike.",
  needs: [],
  make: (show) => pdfOf(scriptPages(show), aboutShow(show, "the script")),
};

export const cueCards: Deliverable = {
  name: "cue-cards.pdf",
  purpose: "Cards to cut out, one a beat: a short cue a reason, and the digits in order.",
  needs: [],
  make: (show) => pdfOf(cueCardPages(show), aboutShow(show, "cue cards")),
};
