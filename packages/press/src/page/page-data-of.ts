import { type Board, type Cell, capital, fingerprint, introductions, nounsFor } from "@solvewright/engine";
import { cluesOf } from "../board/subject.ts";
import { cellsHeard, cluesHeard } from "./heard.ts";
import type { ClueData, HouseData, PageData, PuzzleData, RuleText, ShowData } from "./page-data.ts";

const namesIn = ({ canvas }: Board, cells: readonly Cell[]): string[] => cells.map((cell) => canvas.names[cell]!);

const puzzleOf = ({ puzzle, canvas }: Board): PuzzleData => ({
  title: puzzle.title,
  grids: puzzle.grids,
  givens: Object.fromEntries([...puzzle.givens].map(([cell, digit]) => [canvas.names[cell]!, digit])),
  rules: puzzle.rules,
});

const housesOf = (board: Board): HouseData[] => {
  const nouns = nounsFor(board, "placed");
  return board.houses.map(({ id, shape, grid, cells }) => ({
    id,
    shape,
    ...(grid === undefined ? {} : { grid }),
    cells: namesIn(board, cells),
    said: nouns.house(id),
  }));
};

/** To a ten-thousandth of a cell, finer than any screen shows. */
const rounded = <T>(shapes: T): T =>
  JSON.parse(JSON.stringify(shapes, (_, part) => (typeof part === "number" ? Math.round(part * 1e4) / 1e4 : part)));

const cluesIn = (board: Board): ClueData[] =>
  cluesOf(board).map(({ id, wholeGrid, shapes, tint }, k) => ({
    id,
    wholeGrid,
    cells: namesIn(board, board.rules[k]!.instance.cells),
    shapes: rounded(shapes),
    ...(tint ? { tint } : {}),
  }));

export const rulesOf = (board: Board): RuleText[] => {
  const noteOf = new Map(board.puzzle.rules.map(({ id, body }) => [id, body.note]));
  return introductions(board).map(({ title, say, ids }) => ({
    title,
    say,
    ids,
    notes: [...new Set(ids.flatMap((id) => noteOf.get(id) ?? []))],
  }));
};

const unmarked = { dot: "dot", bar: "bar", xv: "X or V" } as const;

/** Marks on edges are there to be counted on only where a rule says that all are shown; else their lack means nothing. */
export const missingIn = ({ rules }: Board): string[] => {
  const nouns = rules.map(({ kind, instance }) => kind.words(instance).noun);
  const marks = new Set(rules.flatMap(({ kind }) => kind.edgeMark ?? []));
  return [...marks]
    .map((mark) => unmarked[mark])
    .filter((mark) => !nouns.includes(`missing ${mark}`))
    .map((mark) => `Neighbours without ${capital(mark) === mark ? "an" : "a"} ${mark} may be any digits.`);
};

/** Everything that the try-it page of this puzzle needs. */
export const pageDataOf = (board: Board, show?: ShowData): PageData => {
  const { puzzle, canvas, rules, groups } = board;
  const said = cellsHeard(board);
  return {
    page: 1,
    fingerprint: fingerprint(puzzle),
    puzzle: puzzleOf(board),
    setters: puzzle.setters.map(({ name, link }) => ({ name, ...(link ? { link } : {}) })),
    ...(puzzle.wording ? { wording: puzzle.wording.trim() } : {}),
    ...(puzzle.notes ? { notes: puzzle.notes.trim() } : {}),
    places: canvas.places,
    cells: canvas.names.map((_, cell) => ({ said: said[cell]!, clues: cluesHeard(board, cell) })),
    houses: housesOf(board),
    groups: groups.map(({ cells }) => namesIn(board, cells)),
    clues: cluesIn(board),
    rules: rulesOf(board),
    missing: missingIn(board),
    unchecked: rules.filter(({ leftOut }) => leftOut).map(({ id }) => id),
    ...(show ? { show } : {}),
  };
};
