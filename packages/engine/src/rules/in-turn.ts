import { both, type Digits, digitsOf, has, isEmpty } from "../board/digits.ts";
import { pairTerm } from "../terms/make.ts";
import type { Term } from "../terms/term.ts";
import type { Named, Scope, Setting } from "./contract.ts";
import { type Line, windowsOf } from "./line.ts";
import { canAllDiffer } from "./reachable.ts";

/** A line on which as many cells in a row as there are classes of digits hold one of each class. */
export interface InTurn extends Line {
  readonly classes: readonly Digits[];
}

const classOf = (classes: readonly Digits[], digit: number): number =>
  classes.findIndex((digits) => has(digits, digit));

/** Read along so many cells, as the set of the classes so far. */
export const inTurn = ({ cells, classes }: InTurn): Scope[] =>
  windowsOf(cells, classes.length).map((window) => ({
    cells: window,
    start: 0,
    next: (state, digit) => {
      const [read, mine] = [state as number, 1 << classOf(classes, digit)];
      return (read & mine) === 0 ? read | mine : undefined;
    },
    ok: () => true,
  }));

/** Beside the rule itself, what follows from two of its rows at once: the cells that lie one turn apart are alike. */
export const inTurnTerms = ({ id, cells, classes }: InTurn & Named): Term[] => [
  ...windowsOf(cells, classes.length).map((window): Term => ({ term: "classes", owner: id, cells: window, classes })),
  ...cells
    .slice(classes.length)
    .map((cell, k) => pairTerm(id, [cells[k]!, cell], (x, y) => classOf(classes, x) === classOf(classes, y))),
];

/** Whether some digits of its cells do; the classes come round in one order all along. */
export const canTakeTurns = ({ cells, classes }: InTurn, { domains }: Setting): boolean => {
  const open = (cell: number): Digits =>
    digitsOf(classes.flatMap((digits, k) => (isEmpty(both(domains[cell]!, digits)) ? [] : [k])));
  const turns = classes.map((_, turn) =>
    cells
      .filter((_, k) => k % classes.length === turn)
      .reduce<Digits>((all, cell) => both(all, open(cell)), -1 as Digits),
  );
  return canAllDiffer(turns);
};
