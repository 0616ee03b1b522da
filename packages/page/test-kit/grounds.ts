import { readFileSync } from "node:fs";
import { accept, type Board, compile, read } from "@solvewright/engine";
import { pageDataOf } from "@solvewright/press";
import { type Ground, groundOf } from "../src/solve/ground.ts";

const boardOf = (text: string): Board => compile(accept(read(text))!);
const exampleText = (name: string): string =>
  readFileSync(new URL(`../../../examples/${name}.puzzle.yaml`, import.meta.url), "utf8");

const millBoard: Board = boardOf(exampleText("paper-mill"));
export const mill: Ground = groundOf(pageDataOf(millBoard));
export const small: Ground = groundOf(
  pageDataOf(
    boardOf(
      "puzzle: 1\ntitle: Small\ngrids: [{ id: main, called: the grid, size: 4 }]\ngivens: { cells: { r1c1: 1 } }",
    ),
  ),
);
export const long: Ground = groundOf(
  pageDataOf(boardOf("puzzle: 1\ntitle: Long\ngrids: [{ id: main, called: the grid, size: 12 }]")),
);
