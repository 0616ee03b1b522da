import type { Board } from "../board/board.ts";
import { cellNamed } from "../puzzle/canvas.ts";
import { fingerprint } from "../puzzle/fingerprint.ts";
import { sourceOf, telling } from "../puzzle/problems.ts";
import type { Problem } from "../puzzle/puzzle.ts";
import { shownTree } from "../puzzle/texts.ts";
import { type Keys, plainOf, type Tell, type Tree, under } from "../puzzle/tree.ts";
import { fitted } from "./fitted.ts";
import { jsonTree } from "./json-tree.ts";
import { entryForms, type Take, type TakeEntry, takeHead } from "./take.ts";

/** Bytes of UTF-8 that a take's file may have. */
export const mostTakeBytes = 4 * 1024 * 1024;

const start = 'a take: { "take": 1, "puzzle": ..., "slate": ..., "ends": ..., "entries": [...] }';
const formNames = Object.keys(entryForms) as (keyof typeof entryForms)[];

const readEntry = (tree: Tree, tell: Tell): TakeEntry[] => {
  const name = formNames.find((key) => tree.shape === "keys" && under(tree, key));
  if (!name) return tell(tree, shownTree(tree), `an entry with one of the keys ${formNames.join(", ")}`) ?? [];
  const entry = fitted<TakeEntry>(entryForms[name] as never, tree, tell, plainOf(tree));
  return entry ? [entry] : [];
};

/** What only the puzzle can say of an entry: whether its cells and its house are there. */
const tellStrangers = (tree: Tree, { canvas, houses }: Board, tell: Tell): void => {
  if (tree.shape !== "keys") return;
  const named = under(tree, "cells");
  const cells = [under(tree, "cell") ?? [], named?.shape === "list" ? named.items : []].flat();
  for (const cell of cells)
    if (cell.shape === "scalar" && /^r\d+c\d+$/.test(cell.text) && cellNamed(canvas, cell.text) === undefined)
      tell(cell, cell.text, "a cell of the puzzle");
  const house = under(tree, "house");
  if (house?.shape === "scalar" && !houses.some(({ id }) => id === house.value))
    tell(house, shownTree(house), `a house of the puzzle, such as ${houses[0]?.id}`);
};

/** Entries stand in the order of time, and within the take. */
const tellOrder = (entries: readonly Tree[], ends: number, tell: Tell): void => {
  let before = 0;
  for (const tree of entries) {
    const at = tree.shape === "keys" ? under(tree, "at") : undefined;
    if (at?.shape !== "scalar" || typeof at.value !== "number") continue;
    if (at.value < before) tell(at, at.text, `a time that is not before the last entry's, ${before}`);
    if (at.value > ends) tell(at, at.text, `a time before the take ends, at ${ends}`);
    before = Math.max(before, at.value);
  }
};

const readHead = (file: Keys, board: Board, tell: Tell) => {
  const rest: Keys = { ...file, entries: file.entries.filter(({ key }) => key !== "entries") };
  const head = fitted<Omit<Take, "entries">>(takeHead as never, rest, tell, plainOf(rest));
  const expected = fingerprint(board.puzzle);
  if (head && head.puzzle !== expected)
    tell(under(file, "puzzle") ?? file, `a take of another puzzle, ${head.puzzle}`, `a take of this one, ${expected}`);
  if (head && head.slate > head.ends)
    tell(under(file, "slate") ?? file, `${head.slate}`, `a slate before the take ends, at ${head.ends}`);
  return head;
};

const readFile = (file: Tree, board: Board, tell: Tell): Take | undefined => {
  if (file.shape !== "keys") return tell(file, shownTree(file), start);
  const head = readHead(file, board, tell);
  const list = under(file, "entries");
  if (list?.shape !== "list") return tell(list ?? file, list ? shownTree(list) : "no entries", "a list of entries");
  const entries = list.items.flatMap((tree) => readEntry(tree, tell));
  for (const tree of list.items) tellStrangers(tree, board, tell);
  tellOrder(list.items, head?.ends ?? Number.POSITIVE_INFINITY, tell);
  return head ? { puzzle: head.puzzle, slate: head.slate, ends: head.ends, entries } : undefined;
};

/** Reads the file of a take of this puzzle. Never throws on a text: all that is wrong is told together. */
export const readTake = (
  text: string,
  board: Board,
): { readonly take?: Take; readonly problems: readonly Problem[] } => {
  const source = sourceOf(text);
  const { tell, problems } = telling();
  const tree = source.trim() === "" ? tell({ from: 0, path: "" }, "an empty file", start) : jsonTree(source, tell);
  const take = tree && readFile(tree, board, tell);
  const found = problems(source);
  return { ...(take && found.length === 0 ? { take } : {}), problems: found };
};
