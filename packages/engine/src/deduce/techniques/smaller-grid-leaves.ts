import { both, count, type Digits, either, none } from "../../board/digits.ts";
import { at, isSettled } from "../../board/knowledge.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import type { Technique } from "../deduction.ts";
import { addRemoval, gathering, removing } from "../reasons.ts";

/**
 * Cells of a house that other grids keep to few digits, as many cells as those digits: the rest of the house has none
 * of them. No marks are needed, only the grids.
 */
export const smallerGridLeaves: Technique = {
  name: "smaller-grid-leaves",
  level: 2,
  *find(knowledge, board) {
    for (const house of board.houses) {
      const kinds = new Set(house.cells.map((cell) => both(board.domains[cell]!, house.digits)));
      for (const limit of kinds) {
        const inside = house.cells.filter(
          (cell) => both(board.domains[cell]!, house.digits) === both(board.domains[cell]!, limit),
        );
        const digits = inside.reduce<Digits>((all, cell) => either(all, board.domains[cell]!), none);
        if (inside.length === house.cells.length || count(digits) !== inside.length) continue;
        const removes = new Map<Cell, Digits>();
        for (const cell of house.cells)
          if (!inside.includes(cell) && !isSettled(knowledge, cell))
            addRemoval(removes, cell, both(at(knowledge, cell), digits));
        if (removes.size > 0) yield removing("smaller-grid-leaves", 2, removes, gathering().house(house.id).reasons);
      }
    }
  },
};
