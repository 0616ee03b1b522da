import {
  aDigit,
  type Board,
  capital,
  cellNamed,
  counted,
  digitAt,
  type House,
  type Knowledge,
  listed,
  nounsFor,
  type Step,
} from "@solvewright/engine";

/** What the two first grades of a nudge are made from: the step, and the state before it. */
export interface Hinted {
  readonly board: Board;
  readonly before: Knowledge;
  readonly step: Step;
}

const cellsOf = (board: Board, names: readonly string[]): number[] =>
  names.map((name) => cellNamed(board.canvas, name)!);

export const concludedIn = ({ places, removes }: Step): string[] => {
  const placed = Object.keys(places);
  return placed.length > 0 ? placed : Object.keys(removes);
};

/** Where the grids that share all of these cells overlap, if several do. */
const sharedBy = (board: Board, cells: readonly number[]): string[] => {
  const [first = []] = cells.map((cell) => board.canvas.grids[cell]!);
  const common = first.filter((grid) => cells.every((cell) => board.canvas.grids[cell]!.includes(grid)));
  return common.length < 2 ? [] : common.map((grid) => board.puzzle.grids[grid]!.called);
};

const shapes = ["region", "row", "column", "other"];
/** The house that holds all of these, a box or region before a row or column. */
const homeOf = (board: Board, cells: readonly number[]): string | undefined =>
  board.houses
    .filter((house) => house.complete && cells.every((cell) => house.cells.includes(cell)))
    .sort((a, b) => shapes.indexOf(a.shape) - shapes.indexOf(b.shape))[0]?.id;

/** "in the top left box of the yard", "where the mill and the yard overlap". */
const placeOf = (board: Board, cells: readonly number[]): { readonly at: string; readonly one: string } => {
  const grids = sharedBy(board, cells);
  if (grids.length > 0) return { at: `where ${listed(grids)} overlap`, one: `where ${listed(grids)} overlap` };
  const home = homeOf(board, cells) ?? homeOf(board, cells.slice(0, 1));
  const nouns = nounsFor(board, "placed");
  const said = home ? nouns.house(home) : nouns.cell(cells[0]!);
  return { at: `at ${said}`, one: `in ${said}` };
};

interface Seen {
  /** Settled cells that it leans on, as digits; and how many open ones. */
  readonly digits: readonly number[];
  readonly open: readonly string[];
  readonly placed: number | undefined;
}

const seenIn = ({ board, before, step }: Hinted): Seen => {
  const facts = Object.keys(step.because.facts);
  const digitIn = (name: string): number | undefined => digitAt(before, cellNamed(board.canvas, name)!);
  return {
    digits: [...new Set(facts.flatMap((name) => digitIn(name) ?? []))],
    open: facts.filter((name) => digitIn(name) === undefined),
    placed: Object.values(step.places)[0],
  };
};

const isPlain = ({ because, assume }: Step): boolean => because.rules.length === 0 && !assume;

/** A cell that sees so much that one digit is left; the houses through which it sees are told next. */
const isSurrounded = (hinted: Hinted): boolean => {
  const { digits, open, placed } = seenIn(hinted);
  const isOwn = open.every((name) => name in hinted.step.places);
  return isPlain(hinted.step) && isOwn && placed !== undefined && digits.length > 2 && !digits.includes(placed);
};

/** A house that lacks one digit only. */
const isLast = (hinted: Hinted): boolean => {
  const { board, step } = hinted;
  const [cell] = cellsOf(board, Object.keys(step.places));
  const { houses } = step.because;
  const { digits, open, placed } = seenIn(hinted);
  const isOwn = cell !== undefined && houses.length === 1 && board.house(houses[0]!)!.cells.includes(cell);
  return isOwn && isPlain(step) && open.length === 0 && digits.length > 1 && !digits.includes(placed!);
};

/** Where to look. */
export const whereSaid = (hinted: Hinted): string => {
  const { board, step } = hinted;
  if (isLast(hinted)) return `Look at ${nounsFor(board, "placed").house(step.because.houses[0]!)}.`;
  const { at, one } = placeOf(board, cellsOf(board, concludedIn(step)));
  return isSurrounded(hinted) ? `One cell ${one} sees ${counted(seenIn(hinted).digits.length)} digits.` : `Look ${at}.`;
};

const linesSaid = (shape: string, labels: readonly string[]): string[] =>
  labels.length === 0 ? [] : [`${shape}${labels.length > 1 ? "s" : ""} ${listed(labels)}`];

/** Houses one by one, rows and columns of one grid together: "row 2 and columns 4 and 5 of the yard". */
const housesSaid = ({ board }: Hinted, ids: readonly string[]): string => {
  const houses = ids.map((id) => board.house(id)!);
  const isLine = ({ shape, grid }: House): boolean => grid !== undefined && (shape === "row" || shape === "column");
  const lines = houses.filter(isLine);
  const byGrid = [...new Set(lines.map(({ grid }) => grid!))].map((grid) => {
    const labels = (shape: string) =>
      lines.filter((house) => house.grid === grid && house.shape === shape).map(({ label }) => label);
    const of = board.puzzle.grids.length > 1 ? ` of ${board.puzzle.grids[grid]!.called}` : "";
    return `${listed([...linesSaid("row", labels("row")), ...linesSaid("column", labels("column"))])}${of}`;
  });
  const others = houses.filter((house) => !isLine(house)).map(({ id }) => nounsFor(board, "placed").house(id));
  return [listed(others), listed(byGrid)].filter((text) => text !== "").join(", and ");
};

/** "Its row in the yard and its column in the mill." */
const aroundSaid = ({ board, step }: Hinted): string => {
  const several = board.puzzle.grids.length > 1;
  const nouns = nounsFor(board, "placed");
  const one = (id: string): string => {
    const { grid } = board.house(id)!;
    return `its ${nouns.sort(id)}${several && grid !== undefined ? ` in ${board.puzzle.grids[grid]!.called}` : ""}`;
  };
  const names = step.because.houses.map(one);
  return names.length > 0 ? `${capital(listed([...new Set(names)]))}.` : "Everything that it sees.";
};

/** What of the clues' cells is known already. */
const knownSaid = (hinted: Hinted): string[] => {
  const { digits, open } = seenIn(hinted);
  if (digits.length + open.length === 0) return [];
  if (open.length === 0) return ["what is settled there"];
  if (digits.length > 0) return ["what stands there so far"];
  return [open.length === 1 ? "what one cell there can still be" : "what some cells there can still be"];
};

const nameOf = (board: Board, id: string): string => {
  const { kind, instance } = board.rule(id)!;
  const { called, noun } = kind.words(instance);
  return called ?? noun;
};

/** A clue by its place, unless it is the only one of its name. */
const clueSaid = (board: Board, id: string): string => {
  const name = nameOf(board, id);
  const isOnly = board.rules.filter((rule) => nameOf(board, rule.id) === name).length === 1;
  return isOnly ? `the ${name}` : nounsFor(board, "placed").rule(id);
};

/** "Five cages together", "three clues together". */
const manySaid = (board: Board, ids: readonly string[]): string => {
  const plurals = [
    ...new Set(ids.map((id) => board.rule(id)!).map(({ kind, instance }) => kind.words(instance).plural)),
  ];
  return `${counted(ids.length)} ${plurals.length === 1 ? plurals[0] : "clues"} together`;
};

/** The clues, the house in which something follows, and what is known there: more would be the line itself. */
const cluesSaid = (hinted: Hinted): string => {
  const { board, step } = hinted;
  const { rules, houses } = step.because;
  const nouns = nounsFor(board, "placed");
  const [cell] = cellsOf(board, concludedIn(step));
  const home = houses.find(
    (id) => board.house(id)!.cells.includes(cell!) && !whereSaid(hinted).includes(nouns.house(id)),
  );
  const clues = rules.length > 2 ? [manySaid(board, rules)] : rules.map((id) => clueSaid(board, id));
  return `${capital(listed([...clues, ...(home ? [nouns.house(home)] : []), ...knownSaid(hinted)]))}.`;
};

/** "The 6s along row 3 and column 2 of the mill." */
const digitSaid = (hinted: Hinted, digit: number): string => {
  const { board, step } = hinted;
  const [cell] = cellsOf(board, Object.keys(step.places));
  const own = step.because.houses.find((id) => board.house(id)!.cells.includes(cell!))!;
  const others = step.because.houses.filter((id) => id !== own);
  const where = nounsFor(board, "placed").house(own);
  return others.length > 0
    ? `The ${digit} of ${where}, and the ${digit}s in ${housesSaid(hinted, others)}.`
    : `Where the ${digit} of ${where} can still go.`;
};

/** What to use there. */
export const useSaid = (hinted: Hinted): string => {
  const { board, step } = hinted;
  const { placed } = seenIn(hinted);
  if (step.assume) {
    const [[name, digit]] = Object.entries(step.assume) as [[string, number]];
    return `Say ${nounsFor(board, "placed").cell(cellNamed(board.canvas, name)!)} were ${aDigit(digit)}, and follow it.`;
  }
  if (step.because.rules.length > 0) return cluesSaid(hinted);
  if (isLast(hinted)) return "It lacks one digit only.";
  if (isSurrounded(hinted)) return aroundSaid(hinted);
  if (placed !== undefined && step.because.houses.length > 0) return digitSaid(hinted, placed);
  const { open } = seenIn(hinted);
  if (step.because.houses.length === 0) return "What one cell there can still be.";
  return open.length > 0
    ? `What ${counted(open.length)} ${open.length === 1 ? "cell" : "cells"} of ${housesSaid(hinted, step.because.houses)} can still be.`
    : `${capital(housesSaid(hinted, step.because.houses))}.`;
};
