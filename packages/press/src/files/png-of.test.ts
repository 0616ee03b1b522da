import { compile } from "@solvewright/engine";
import { puzzleOf } from "@solvewright/engine/test-kit";
import { expect, test } from "vitest";
import { boardSvg } from "../board/board-svg.ts";
import { beyondBesley } from "./besley.ts";
import { pngOf } from "./png-of.ts";

const board = compile(puzzleOf("puzzle: 1\ntitle: Small\ngrids: [{ id: main, size: 4 }]\n"));
const name = (digit: number) => ({ settled: { r1c1: digit } });
const picture = (written = {}) => pngOf(boardSvg(board, { cell: 96, setting: "static", painted: true, written }));

/** Width and height, from the header (PNG, third edition, 11.2.1). */
const sizeOf = (png: Uint8Array): readonly number[] => {
  const view = new DataView(png.buffer, png.byteOffset);
  return [view.getUint32(16), view.getUint32(20)];
};

test("it is a PNG of the drawing's size", () => {
  const png = picture();
  expect([...png.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  const [width, height] = sizeOf(png);
  expect(width).toBeGreaterThanOrEqual(4 * 96);
  expect(height).toBeGreaterThanOrEqual(4 * 96);
});

test("letters are set, and different ones look different", () => {
  const pictures = [picture(), picture(name(1)), picture(name(2))].map((png) => Buffer.from(png).toString("base64"));
  expect(new Set(pictures).size).toBe(3);
});

test("a letter that our faces lack is known", () => {
  expect(beyondBesley("Zażółć gęślą jaźń 123")).toEqual([]);
  expect(beyondBesley("a数b数")).toEqual(["数"]);
});

test("a title in letters that our faces lack is not lost", () => {
  const titled = (title: string) => {
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="60" height="60"><text x="5" y="45" font-family="Besley" font-size="40">${title}</text></svg>`;
    return Buffer.from(pngOf(svg)).toString("base64");
  };
  const pictures = ["", "Я", "Ж", "Ω"].map(titled);
  expect(new Set(pictures).size).toBe(4);
});
