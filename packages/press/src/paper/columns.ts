import { heightOf, type Row } from "./block.ts";

/** Rows that stay together, so that no column ends between them. */
const bundles = (rows: readonly Row[]): Row[][] => {
  const found: Row[][] = [];
  let isOpen = false;
  for (const row of rows) {
    if (isOpen) found.at(-1)!.push(row);
    else found.push([row]);
    isOpen = row.keepsWithNext ?? false;
  }
  return found;
};

/**
 * Rows dealt to columns of these heights, the last height again and again; what is higher than a column has one to
 * itself. A column does not begin with a gap.
 */
export const columnsOf = (rows: readonly Row[], heights: readonly number[]): Row[][] => {
  const columns: Row[][] = [[]];
  const room = (): number => heights[Math.min(columns.length, heights.length) - 1]!;
  for (const bundle of bundles(rows)) {
    const column = columns.at(-1)!;
    if (column.length > 0 && heightOf(column) + heightOf(bundle) > room()) columns.push([]);
    const isGap = bundle.length === 1 && bundle[0]!.draw(0, 0) === "";
    if (columns.at(-1)!.length > 0 || !isGap) columns.at(-1)!.push(...bundle);
  }
  return columns;
};

/** The least height at which rows fit in so many columns side by side. */
export const balancedHeight = (rows: readonly Row[], count: number): number => {
  let [low, high] = [heightOf(rows) / count, heightOf(rows)];
  while (high - low > 1) {
    const middle = (low + high) / 2;
    const columns = columnsOf(rows, [middle]);
    if (columns.length <= count && columns.every((column) => heightOf(column) <= middle + 0.01)) high = middle;
    else low = middle;
  }
  return high;
};
