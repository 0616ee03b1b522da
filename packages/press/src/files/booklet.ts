import { type Booklet, bookletPages } from "../deliverables/sheet/booklet-pages.ts";
import { oneLine } from "../deliverables/texts.ts";
import { type Paper, papers } from "../paper/paper.ts";
import { pdfOf } from "./pdf-of.ts";

/** Several puzzles in one PDF, their solutions at the end. */
export const bookletPdf = (booklet: Booklet): Uint8Array =>
  pdfOf(bookletPages(booklet), { title: oneLine(booklet.title) });

export const paperNamed = (name: string): Paper | undefined => papers.find((paper) => paper.name === name);
export const paperNames: readonly string[] = papers.map(({ name }) => name);
