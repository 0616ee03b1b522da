import type { SpotFact } from "@solvewright/engine";

/** What stands on the board besides the givens, by the names of cells: the form of the board file. */
export interface Written {
  readonly settled?: Readonly<Record<string, number>>;
  readonly marks?: Readonly<Record<string, readonly number[]>>;
  readonly spots?: readonly SpotFact[];
}
