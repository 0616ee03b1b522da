import type { Cell } from "../puzzle/canvas.ts";
import type { Board } from "./board.ts";
import { remembered } from "./remembered.ts";

/** What two cells that see each other share: a house, or a rule whose cells may not repeat a digit. */
export interface Link {
  readonly kind: "house" | "rule";
  readonly id: string;
}

const tableOf = remembered((board: Board): ReadonlyMap<number, readonly Link[]> => {
  const table = new Map<number, Link[]>();
  const add = (cells: readonly Cell[], link: Link): void => {
    for (const a of cells)
      for (const b of cells) {
        if (a === b) continue;
        const key = a * board.domains.length + b;
        const links = table.get(key);
        if (links) links.push(link);
        else table.set(key, [link]);
      }
  };
  for (const { id, cells } of board.houses) add(cells, { kind: "house", id });
  for (const { rule, cells } of board.groups) add(cells, { kind: "rule", id: rule });
  return table;
});

/** Everything through which one cell sees another; houses first, and none where they don't see each other. */
export const linksBetween = (board: Board, a: Cell, b: Cell): readonly Link[] =>
  tableOf(board).get(a * board.domains.length + b) ?? [];
