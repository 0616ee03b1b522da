import { both, type Digits, either } from "../board/digits.ts";
import type { Link } from "../board/links.ts";
import type { Related } from "../board/related.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Deduction, Reasons, Spot } from "./deduction.ts";

/** Reasons in the making: facts about one cell are narrowed together, ids are kept once, in the order they come. */
export interface Gathering {
  fact(cell: Cell, digits: Digits): Gathering;
  house(id: string): Gathering;
  rule(id: string): Gathering;
  link(link: Link): Gathering;
  all(reasons: Reasons): Gathering;
  readonly reasons: Reasons;
}

export const gathering = (): Gathering => {
  const facts = new Map<Cell, Digits>();
  const houses = new Set<string>();
  const rules = new Set<string>();
  const spots: Spot[] = [];
  const relations: Related[] = [];
  const self: Gathering = {
    fact: (cell, digits) => {
      facts.set(cell, both(facts.get(cell) ?? digits, digits));
      return self;
    },
    house: (id) => {
      houses.add(id);
      return self;
    },
    rule: (id) => {
      rules.add(id);
      return self;
    },
    link: ({ kind, id }) => (kind === "house" ? self.house(id) : self.rule(id)),
    all: (reasons) => {
      for (const [cell, digits] of reasons.facts) self.fact(cell, digits);
      for (const id of reasons.houses) houses.add(id);
      for (const id of reasons.rules) rules.add(id);
      spots.push(...reasons.spots);
      relations.push(...reasons.relations);
      return self;
    },
    get reasons() {
      return {
        facts: new Map(facts),
        spots: [...spots],
        relations: [...relations],
        houses: [...houses],
        rules: [...rules],
      };
    },
  };
  return self;
};

const nothing = { places: new Map(), removes: new Map(), spots: [], relates: [] } as const;

/** A deduction that settles one cell. */
export const placing = (technique: string, level: number, cell: Cell, digit: number, because: Reasons): Deduction => ({
  ...nothing,
  technique,
  level,
  places: new Map([[cell, digit]]),
  because,
});

/** A deduction that takes digits out of cells. */
export const removing = (
  technique: string,
  level: number,
  removes: ReadonlyMap<Cell, Digits>,
  because: Reasons,
): Deduction => ({
  ...nothing,
  technique,
  level,
  removes,
  because,
});

/** A deduction that ties cells together. */
export const relating = (technique: string, level: number, related: Related, because: Reasons): Deduction => ({
  ...nothing,
  technique,
  level,
  relates: [related],
  because,
});

/** The end of a what-if: its reasons can't all be true. */
export const contradicting = (because: Reasons): Deduction => ({
  ...nothing,
  technique: "contradiction",
  level: 1,
  because,
  contradiction: true,
});

/** Removals of two deductions or cells taken together. */
export const addRemoval = (removes: Map<Cell, Digits>, cell: Cell, digits: Digits): void => {
  if (digits !== 0) removes.set(cell, either(removes.get(cell) ?? (0 as Digits), digits));
};
