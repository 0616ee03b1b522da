import type { Take } from "@solvewright/engine";

/**
 * When each cell was settled for good, in the take's seconds, by cell name: from then on it bore its digit until the end.
 * A cell that never was, or was taken out again, is left out.
 */
export const settledIn = (
  { entries }: Take,
  solution: Readonly<Record<string, number>>,
): ReadonlyMap<string, number> => {
  const settled = new Map<string, number>();
  for (const entry of entries) {
    if ("settle" in entry && entry.settle === solution[entry.cell]) {
      if (!settled.has(entry.cell)) settled.set(entry.cell, entry.at);
    } else if ("cell" in entry) settled.delete(entry.cell);
  }
  return settled;
};
