import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type Board, compile, kinds } from "@solvewright/engine";
import { puzzleOf } from "@solvewright/engine/test-kit";
import { expect, test } from "vitest";
import { boardSvg } from "../board/board-svg.ts";
import { coverSvg } from "../deliverables/cover.ts";
import { sheetPages } from "../deliverables/sheet/sheet-pages.ts";
import { a4 } from "../paper/paper.ts";
import { beyondBesley } from "./besley.ts";
import { withEveryLetter } from "./faces.ts";

const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
const folder = at("../../../../examples/");
const examples = readdirSync(folder).filter((name) => name.endsWith(".yaml"));
const boardIn = (name: string): Board => compile(puzzleOf(readFileSync(`${folder}${name}`, "utf8")));

const textsIn = (svg: string): string =>
  [...svg.matchAll(/<(?:text|tspan)[^>]*>([^<]*)/g)].map(([, text]) => text).join("");

/** What our own sentences and drawings use must be in our own faces; a spare is for titles and names alone. */
test.each(examples)("%s: every letter of its pictures and its sheet is in our own faces", (name) => {
  const board = boardIn(name);
  const settled = Object.fromEntries(board.canvas.names.map((cell) => [cell, 7]));
  for (const svg of [boardSvg(board, { written: { settled } }), coverSvg(board)])
    expect(beyondBesley(textsIn(svg))).toEqual([]);
  for (const page of sheetPages({ board, paper: a4, settled })) expect(withEveryLetter(page)).not.toContain("DejaVu");
});

test("so is every letter of the source of what kinds say", () => {
  const sources = readdirSync(at("../../../engine/src/rules/kinds/"), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts") && !/\.(test|cases|oracle)\.ts$/.test(name))
    .map((name) => readFileSync(`${at("../../../engine/src/rules/kinds/")}${name}`, "utf8"));
  expect(sources.length).toBeGreaterThanOrEqual(kinds.length / 2);
  const said = sources.flatMap((source) => source.match(/"[^"\n]*"|`[^`]*`/g) ?? []).join("");
  // The signs of the last list are drawn as paths (scene/letters.ts).
  expect(beyondBesley(said).filter((letter) => !/[\nΣ≡≤≥≠]/u.test(letter))).toEqual([]);
});
