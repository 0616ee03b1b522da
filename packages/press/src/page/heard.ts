import { type Board, type Cell, listed, type Nouns, nounsFor, type RuleInstance } from "@solvewright/engine";

const severally = ({ puzzle }: Board, cell: Cell, nouns: readonly Nouns[], under: readonly number[]): string[] =>
  under.map((grid) => nouns[puzzle.grids.length > 1 ? grid : 0]!.cell(cell));

/** A cell by all its names, that of the topmost grid first: "row 4, column 1 of the yard and row 1, column 6 of the mill". */
export const cellsHeard = (board: Board): string[] => {
  const nouns = board.puzzle.grids.map((_, grid) => nounsFor(board, "placed", grid));
  return board.canvas.grids.map((under, cell) => listed(severally(board, cell, nouns, under.toReversed())));
};

const towards = ({ canvas }: Board, from: Cell, to: Cell): string => {
  const [a, b] = [canvas.places[from]!, canvas.places[to]!];
  if (a.row === b.row) return b.column > a.column ? "to the right" : "to the left";
  return b.row > a.row ? "below" : "above";
};

/** Where a pair's definition tells its ends apart, which of them is the greater. */
const orderHeard = ({ scopes }: RuleInstance, cell: Cell): string => {
  const [scope] = scopes;
  if (!scope || !("holds" in scope) || !scope.holds([2, 1]) || scope.holds([1, 2])) return "";
  return scope.cells[0] === cell ? ", this is the greater" : ", this is the smaller";
};

/** What one clue is to one of its cells: along a line the cell's place, across an edge the other cell. */
const clueHeard = (board: Board, rule: RuleInstance, cell: Cell): string => {
  const { kind, instance, cells } = rule;
  const { called, noun } = kind.words(instance);
  const name = called ?? noun;
  if (kind.body.gesture === "drag") return `${name}, ${cells.indexOf(cell) + 1} of ${cells.length}`;
  const other = cells.find((end) => end !== cell);
  if (kind.body.gesture !== "edge" || other === undefined) return name;
  return `${name} ${towards(board, cell, other)}${orderHeard(rule, cell)}`;
};

export const cluesHeard = (board: Board, cell: Cell): string[] =>
  board.rules
    .filter((rule) => !rule.wholeGrid && rule.cells.includes(cell))
    .map((rule) => clueHeard(board, rule, cell));
