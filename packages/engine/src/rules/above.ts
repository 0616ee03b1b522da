import { max, min } from "../board/digits.ts";
import { type Cell, neighboursOf, type Place } from "../puzzle/canvas.ts";
import type { Term } from "../terms/term.ts";
import { cellsAt } from "./cells.ts";
import type { Bound, Fault, Named, Scope, Setting } from "./contract.ts";

/** Cells that are greater (or less) than every cell that shares a side with them; the neighbours are bound as well. */
export interface Above extends Bound {
  readonly places: readonly Place[];
  /** The cells listed. */
  readonly own: readonly Cell[];
  readonly pairs: readonly { readonly less: Cell; readonly greater: Cell }[];
}

/** The listed cells against their neighbours that are not listed. */
export const aboveNeighbours = (places: readonly Place[], way: "greater" | "less", setting: Setting): Above => {
  const own = cellsAt(setting, places);
  const listed = new Set(own);
  const edges = own.flatMap((cell) =>
    neighboursOf(setting.canvas, cell)
      .filter((other) => !listed.has(other))
      .map((other) => [cell, other] as const),
  );
  const pairs = edges.map(([cell, other]) =>
    way === "greater" ? { less: other, greater: cell } : { less: cell, greater: other },
  );
  return { places, own, pairs, cells: [...new Set([...own, ...edges.map(([, other]) => other)])] };
};

/** The pairs that no digits of theirs can meet. Each pair for itself is enough: the greatest and the least serve all. */
export const unfitPairs = ({ pairs, own }: Above, { domains, canvas }: Setting): Fault[] =>
  pairs
    .filter(({ less, greater }) => max(domains[greater]!) <= min(domains[less]!))
    .map(({ less, greater }) => {
      const isGreater = own.includes(greater);
      const [cell, other] = isGreater ? [greater, less] : [less, greater];
      const name = canvas.names[other]!;
      return {
        at: ["cells"],
        read: canvas.names[cell]!,
        right: isGreater ? `a cell that can be greater than ${name}` : `a cell that can be less than ${name}`,
      };
    });

/** Listed cells that share a side, as faults; `word` is what both would have to be. */
export const touching = (places: readonly Place[], word: "greater" | "less", setting: Setting): Fault[] => {
  const own = cellsAt(setting, places);
  const order = new Map(own.map((cell, k) => [cell, k]));
  return own.flatMap((cell, k) =>
    neighboursOf(setting.canvas, cell)
      .filter((other) => order.has(other) && order.get(other)! < k)
      .sort((a, b) => order.get(a)! - order.get(b)!)
      .map((other) => {
        const [first, second] = [setting.canvas.names[other]!, setting.canvas.names[cell]!];
        return {
          at: ["cells"],
          read: `${first} ${second}`,
          right: `cells that don't touch: ${first} and ${second} can't both be the ${word}`,
        };
      }),
  );
};

export const eachAbove = ({ pairs }: Above): Scope[] =>
  pairs.map(({ less, greater }) => ({ cells: [less, greater], holds: ([low, high]) => low! < high! }));

export const eachAboveTerms = ({ id, pairs }: Above & Named): Term[] =>
  pairs.map(({ less, greater }) => ({ term: "order", owner: id, cells: [less, greater], strict: true }));
