import PdfDocument from "pdfkit";
import svgToPdf from "svg-to-pdfkit";
import { withoutTurns } from "../deliverables/texts.ts";
import { fontFor, withEveryLetter } from "./faces.ts";

/** What a PDF says about itself. */
export interface AboutPdf {
  readonly title: string;
  readonly author?: string;
}

/** The same pages make the same bytes, so a PDF bears no date of its own. */
const noDate = new Date(0);

const sizeIn = (page: string): [number, number] => {
  const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(page)!;
  return [Number(width), Number(height)];
};

/** Everything that a finished document has to give. */
const bytesOf = (document: PDFKit.PDFDocument): Uint8Array => {
  const chunks: Buffer[] = [];
  for (let chunk = document.read(); chunk !== null; chunk = document.read()) chunks.push(chunk as Buffer);
  return new Uint8Array(Buffer.concat(chunks));
};

/** Pages as SVG in points and in the static setting, each as large as its view box, as one vector PDF with our own faces. */
export const pdfOf = (pages: readonly string[], { title, author }: AboutPdf): Uint8Array => {
  const document = new PdfDocument({
    autoFirstPage: false,
    margin: 0,
    font: fontFor("Besley"),
    lang: "en",
    displayTitle: true,
    info: {
      Title: withoutTurns(title),
      ...(author ? { Author: withoutTurns(author) } : {}),
      Creator: "Solvewright",
      CreationDate: noDate,
    },
  });
  for (const page of pages) {
    const [width, height] = sizeIn(page);
    document.addPage({ size: [width, height], margin: 0 });
    svgToPdf(document, withEveryLetter(withoutTurns(page)), 0, 0, {
      width,
      height,
      assumePt: true,
      fontCallback: fontFor,
    });
  }
  document.end();
  return bytesOf(document);
};
