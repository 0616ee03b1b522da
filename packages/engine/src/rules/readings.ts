import type { Cell } from "../puzzle/canvas.ts";
import type { Bound, OtherReading } from "./contract.ts";

/** The rule would not keep its digits from repeating. */
export const mayRepeat = (says: string): OtherReading<Bound> => ({
  says,
  scopes: (ours) => ours.filter((scope) => !("different" in scope)),
  terms: (ours) => ours.filter(({ term }) => term !== "different"),
});

/** The rule would keep these cells of it from repeating a digit as well. */
export const mayNotRepeat = <I extends Bound>(
  says: string,
  cellsOf: (instance: I) => readonly Cell[],
): OtherReading<I> => ({
  says,
  scopes: (ours, instance) => [...ours, { cells: cellsOf(instance), different: true }],
  terms: (ours, instance) => [...ours, { term: "different", owner: instance.id, cells: cellsOf(instance) }],
});

/** The rule would not be there. */
export const meansNothing = (says: string): OtherReading<Bound> => ({ says, scopes: () => [], terms: () => [] });
