declare module "svg-to-pdfkit" {
  interface Options {
    readonly width: number;
    readonly height: number;
    readonly assumePt: boolean;
    fontCallback(family: string, isBold: boolean, isItalic: boolean): string;
  }
  export default function svgToPdf(
    document: PDFKit.PDFDocument,
    svg: string,
    x: number,
    y: number,
    options: Options,
  ): void;
}
