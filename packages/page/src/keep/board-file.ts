import type { Asked, Entry, State } from "../app/state.ts";
import type { Ground } from "../solve/ground.ts";
import { cellIn } from "../solve/ground.ts";
import type { Position } from "../solve/position.ts";

/** A board as a file: where a solver stands and, for testers, what was done and asked, in ms of solving since the start. */
export interface BoardFile extends Position {
  readonly board: 1;
  /** The puzzle's fingerprint. */
  readonly puzzle: string;
  readonly entries: readonly Entry[];
  readonly nudges: readonly Asked[];
}

export const boardFileOf = ({ position, log, asked }: State, { data }: Ground): BoardFile => ({
  board: 1,
  puzzle: data.fingerprint,
  ...position,
  entries: log,
  nudges: asked,
});

type Found =
  | { readonly file: Position & Partial<Pick<BoardFile, "entries" | "nudges">> }
  | { readonly problem: string };

const isTable = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
};

/** The first thing that does not belong to this puzzle, as a sentence. */
const misfit = (ground: Ground, cell: string, digits: unknown): string | undefined => {
  if (!ground.cells.has(cell)) return `${cell} is no cell of this puzzle.`;
  const list = Array.isArray(digits) ? digits : [digits];
  const odd = list.find((digit) => !cellIn(ground, cell).digits.includes(digit));
  return odd === undefined ? undefined : `${cell} can't hold ${String(odd)}.`;
};

const spotMisfit = (ground: Ground, spot: unknown): string | undefined => {
  if (!isTable(spot) || !Array.isArray(spot.cells) || typeof spot.house !== "string")
    return "A spot mark is not whole.";
  const house = ground.houses.get(spot.house);
  if (!house) return `${spot.house} is no house of this puzzle.`;
  const outside = spot.cells.find((cell) => !house.cells.includes(cell));
  if (outside !== undefined) return `${String(outside)} does not lie in ${house.said}.`;
  return spot.cells.map((cell) => misfit(ground, cell, spot.digit)).find((text) => text !== undefined);
};

const firstMisfit = (ground: Ground, { settled, marks, spots }: Position): string | undefined =>
  [
    ...[...Object.entries(settled), ...Object.entries(marks)].map(([cell, digits]) => misfit(ground, cell, digits)),
    ...spots.map((spot) => spotMisfit(ground, spot)),
  ].find((text) => text !== undefined);

const withoutGivens = <T>(ground: Ground, table: Readonly<Record<string, T>>): Record<string, T> =>
  Object.fromEntries(Object.entries(table).filter(([cell]) => cellIn(ground, cell).given === undefined));

/** Reads a board file for this puzzle, or says in a sentence why it can't be taken. */
export const readBoardFile = (text: string, ground: Ground): Found => {
  const file = parsed(text);
  if (!isTable(file) || file.board !== 1) return { problem: "That is no board file." };
  if (file.puzzle !== ground.data.fingerprint) return { problem: "That board belongs to another puzzle." };
  const { settled = {}, marks = {}, spots = [], entries, nudges } = file;
  if (!isTable(settled) || !isTable(marks) || !Array.isArray(spots))
    return { problem: "That board file is not whole." };
  const position = { settled, marks, spots } as unknown as Position;
  const problem = firstMisfit(ground, position);
  if (problem) return { problem: `${problem} Nothing has been changed.` };
  const own = { settled: withoutGivens(ground, position.settled), marks: withoutGivens(ground, position.marks), spots };
  const list = <T>(value: unknown): readonly T[] | undefined => (Array.isArray(value) ? value : undefined);
  const [log, asked] = [list<Entry>(entries), list<Asked>(nudges)];
  return { file: { ...own, ...(log ? { entries: log } : {}), ...(asked ? { nudges: asked } : {}) } };
};
