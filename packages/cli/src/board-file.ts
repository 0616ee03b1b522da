import { readFile } from "node:fs/promises";
import {
  type Board,
  cellNamed,
  fingerprint,
  has,
  type Position,
  type Settling,
  type SpotFact,
} from "@solvewright/engine";
import * as z from "zod/mini";
import { badUsage } from "./faults.ts";
import { printable } from "./printable.ts";

const digit = z.int().check(z.minimum(0), z.maximum(31));
const cells = <T extends z.ZodMiniType>(value: T) => z.record(z.string(), value);

/** A board file (docs/format.md); what a try-it page adds to it is left aside. */
const form = z.object({
  board: z.literal(1),
  puzzle: z.string(),
  settled: z._default(cells(digit), {}),
  marks: z._default(cells(z.array(digit)), {}),
  spots: z._default(z.array(z.object({ digit, house: z.string(), cells: z.array(z.string()) })), []),
});

const refused = (file: string, read: string, right: string) =>
  badUsage(`${printable(file)}: ${printable(read)}. Right: ${printable(right)}.`, { read, right });

const parsed = (text: string, file: string): unknown => {
  try {
    return JSON.parse(text);
  } catch (error) {
    throw refused(file, `no JSON (${(error as Error).message})`, "a board file, as the try-it page saves it");
  }
};

const misfitSpot = (board: Board, { digit, house, cells }: SpotFact): string | undefined => {
  const within = board.house(house)?.cells ?? board.rule(house)?.cells;
  if (!within) return `${house} is no house or rule of this puzzle`;
  if (cells.length === 0) return `no place is marked for ${digit} in ${house}`;
  for (const name of cells) {
    const cell = cellNamed(board.canvas, name);
    if (cell === undefined) return `${name} is no cell of this puzzle`;
    if (!within.includes(cell)) return `${name} does not lie in ${house}`;
    if (!has(board.domains[cell]!, digit)) return `${name} can't hold ${digit}`;
  }
  return undefined;
};

/** The first entry that does not fit the puzzle. */
const misfitIn = (board: Board, { settled, marks, spots }: Position): string | undefined => {
  const entries = [...Object.entries(settled).map(([name, one]) => [name, [one]] as const), ...Object.entries(marks)];
  for (const [name, digits] of entries) {
    const cell = cellNamed(board.canvas, name);
    if (cell === undefined) return `${name} is no cell of this puzzle`;
    const odd = digits.find((each) => !has(board.domains[cell]!, each));
    if (odd !== undefined) return `${name} can't hold ${odd}`;
  }
  return spots.map((spot) => misfitSpot(board, spot)).find((misfit) => misfit !== undefined);
};

const textOf = async (file: string): Promise<string> => {
  try {
    return await readFile(file, "utf8");
  } catch {
    throw refused(file, "it can't be read", "a board file that is there");
  }
};

const piece = z.object({ settled: z.optional(z.string()), to: z.optional(z.unknown()) });
const entries = z.array(z.object({ at: z.number().check(z.minimum(0)), change: z.array(piece) }));
const testersForm = z.object({ board: z.literal(1), puzzle: z.string(), entries: z._default(entries, []) });

const wrongForm = (file: string, [issue]: readonly z.core.$ZodIssue[]) =>
  refused(file, `${issue!.path.join("/") || "the file"} is not as it should be`, issue!.message);

/** What a tester settled and when, from a board file; undefined where it belongs to another puzzle. */
export const settlingsIn = async (file: string, board: Board): Promise<Settling[] | undefined> => {
  const { success, data, error } = testersForm.safeParse(parsed(await textOf(file), file));
  if (!success) throw wrongForm(file, error.issues);
  if (data.puzzle !== fingerprint(board.puzzle)) return undefined;
  return data.entries.flatMap(({ at, change }) =>
    change.flatMap(({ settled, to }): Settling[] => {
      const cell = settled === undefined ? undefined : cellNamed(board.canvas, settled);
      if (cell === undefined) return [];
      return [{ at, cell, ...(typeof to === "number" ? { digit: to } : {}) }];
    }),
  );
};

/** Where a solver of this puzzle stands, from a board file. */
export const positionIn = async (file: string, board: Board): Promise<Position> => {
  const { success, data, error } = form.safeParse(parsed(await textOf(file), file));
  if (!success) throw wrongForm(file, error.issues);
  if (data.puzzle !== fingerprint(board.puzzle))
    throw refused(file, "this board belongs to another puzzle", `one whose puzzle is ${fingerprint(board.puzzle)}`);
  const misfit = misfitIn(board, data);
  if (misfit) throw refused(file, misfit, "cells, digits and houses of this puzzle");
  return data;
};
