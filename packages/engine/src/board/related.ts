import type { Cell } from "../puzzle/canvas.ts";

/** What is known of cells together, whatever their digits are. */
export type Related =
  | { readonly relation: "same" | "less"; readonly cells: readonly [Cell, Cell] }
  | { readonly relation: "sum"; readonly cells: readonly Cell[]; readonly is: number }
  | { readonly relation: "parity"; readonly cells: readonly [Cell, Cell]; readonly is: "same" | "different" };

const isEitherOrder = ({ relation }: Related): boolean => relation !== "less";

/** The same for the same relation. */
export const keyOfRelated = (related: Related): string => {
  const cells = isEitherOrder(related) ? [...related.cells].sort((a, b) => a - b) : related.cells;
  return `${related.relation} ${cells.join()} ${"is" in related ? related.is : ""}`;
};
