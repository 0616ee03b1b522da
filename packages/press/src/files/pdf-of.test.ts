import { compile } from "@solvewright/engine";
import { puzzleOf } from "@solvewright/engine/test-kit";
import { expect, test } from "vitest";
import { sheetPages } from "../deliverables/sheet/sheet-pages.ts";
import { a4, letter } from "../paper/paper.ts";
import { withEveryLetter } from "./faces.ts";
import { pdfOf } from "./pdf-of.ts";

const board = (setter = "{ name: Maud Ferrier, link: 'https://example.org/', permission: granted }") =>
  compile(puzzleOf(`puzzle: 1\ntitle: Small\nsetter: ${setter}\ngrids: [{ id: main, size: 4 }]\n`));
const latin1 = (bytes: Uint8Array): string => Buffer.from(bytes).toString("latin1");

test.each([a4, letter])("a page of $called is as large as the paper (PDF 32000-1, 14.11.2)", (paper) => {
  const pdf = latin1(pdfOf(sheetPages({ board: board(), paper }), { title: "Small" }));
  expect(pdf.startsWith("%PDF-1.")).toBe(true);
  expect(pdf).toContain(`/MediaBox [0 0 ${paper.width} ${paper.height}]`);
});

test("it is vector through and through, and every font is embedded", () => {
  const pdf = latin1(pdfOf(sheetPages({ board: board(), paper: a4 }), { title: "Small" }));
  expect(pdf).not.toMatch(/\/Subtype \/Image/);
  const fonts = pdf.match(/\/Type \/FontDescriptor/g)!;
  expect(pdf.match(/\/FontFile2/g)).toHaveLength(fonts.length);
});

test("the setter's name leads to the setter; what is no web or mail address leads nowhere", () => {
  const linked = (link: string) => {
    const { puzzle, ...rest } = board();
    const setters = puzzle.setters.map((setter) => ({ ...setter, link }));
    return latin1(pdfOf(sheetPages({ board: { ...rest, puzzle: { ...puzzle, setters } }, paper: a4 }), { title: "x" }));
  };
  expect(linked("https://example.org/")).toContain("/URI (https://example.org/)");
  expect(linked("javascript:alert(1)")).not.toContain("/URI");
});

test("letters that a face lacks are set in another, the rest is left as it is", () => {
  const set = (text: string) => withEveryLetter(`<text font-family="Besley" x="1">${text}</text>`);
  expect(set("Maud &amp; co")).toBe('<text font-family="Besley" x="1">Maud &amp; co</text>');
  expect(set("Łódź!")).toBe(
    '<text font-family="Besley" x="1"><tspan font-family="Besley Ext">Ł</tspan>ód<tspan font-family="Besley Ext">ź</tspan>!</text>',
  );
  expect(set("Я≤")).toBe('<text font-family="Besley" x="1"><tspan font-family="DejaVu Sans">Я≤</tspan></text>');
});

test("who has not agreed to printing is named at the foot", () => {
  const pages = (setter: string) => sheetPages({ board: board(setter), paper: a4 }).join();
  expect(pages("{ name: Ivo Lang, permission: { show: granted } }")).toContain("Ivo Lang has not agreed to printing");
  expect(pages("{ name: Ivo Lang, permission: granted }")).toContain("Printed with the setter’s permission");
});
