import type { Board } from "../../board/board.ts";
import { both, count, type Digits, either, none } from "../../board/digits.ts";
import { at, isSettled, type Knowledge } from "../../board/knowledge.ts";
import type { Link } from "../../board/links.ts";
import { remembered } from "../../board/remembered.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { combinations } from "../combinations.ts";
import type { Deduction, Technique } from "../deduction.ts";
import { addRemoval, gathering, removing } from "../reasons.ts";

interface ApartSet {
  readonly cells: readonly Cell[];
  readonly link: Link;
}

/** Every set of cells that may not repeat a digit: houses, and rules such as cages. */
export const apartSets = remembered((board: Board): readonly ApartSet[] => [
  ...board.houses.map(({ cells, id }) => ({ cells, link: { kind: "house", id } as const })),
  ...board.groups
    .filter(({ cells }) => cells.length > 2)
    .map(({ cells, rule }) => ({ cells, link: { kind: "rule", id: rule } as const })),
]);

function* nakedSets(
  size: number,
  technique: string,
  level: number,
  knowledge: Knowledge,
  board: Board,
): Iterable<Deduction> {
  for (const { cells, link } of apartSets(board)) {
    const open = cells.filter((cell) => !isSettled(knowledge, cell));
    if (open.length <= size) continue;
    const few = open.filter(
      (cell) => count(at(knowledge, cell)) <= size && at(knowledge, cell) !== board.domains[cell],
    );
    for (const set of combinations(few, size)) {
      const digits = set.reduce<Digits>((all, cell) => either(all, at(knowledge, cell)), none);
      if (count(digits) !== size) continue;
      const removes = new Map<Cell, Digits>();
      for (const cell of open) if (!set.includes(cell)) addRemoval(removes, cell, both(at(knowledge, cell), digits));
      if (removes.size === 0) continue;
      const because = gathering().link(link);
      for (const cell of set) because.fact(cell, at(knowledge, cell));
      yield removing(technique, level, removes, because.reasons);
    }
  }
}

const naked = (size: number, name: string, level: number): Technique => ({
  name,
  level,
  fits: ({ facts }) => facts.size === size && count([...facts.values()].reduce<Digits>(either, none)) === size,
  find: (knowledge, board) => nakedSets(size, name, level, knowledge, board),
});

/** As many cells of a house as digits in them: the others have none of those. */
export const nakedPair = naked(2, "naked-pair", 2);
export const nakedTriple = naked(3, "naked-triple", 2);
export const nakedQuad = naked(4, "naked-quad", 3);
