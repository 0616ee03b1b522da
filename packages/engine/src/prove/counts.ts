import { listOf } from "../board/digits.ts";
import type { Because } from "../deduce/step.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Scope } from "../rules/contract.ts";
import type { Definition, RuleDefinition } from "./definition.ts";
import type { ReadAlong } from "./reading.ts";

/** Houses and fixed sums of which the claim says that adding and subtracting them leads on. */
type Count = NonNullable<Because["counts"]>[number];

interface Total {
  readonly cells: readonly Cell[];
  readonly sum: number;
}

/** The sum that the rule's own scopes force on some set of its cells, worked out from the definition alone. */
const fixedTotal = (rule: RuleDefinition, about: Definition): Total | undefined => {
  for (const scope of rule.scopes) {
    if (!("next" in scope)) continue;
    const sums = sumsOf(scope, about);
    if (sums?.size === 1) return { cells: scope.cells, sum: [...sums][0]! };
  }
  return undefined;
};

const mostPairs = 20_000;

/** Every sum of digits with which the scope can be read to its end; undefined where there are too many to look at. */
const sumsOf = (scope: ReadAlong, about: Definition): Set<number> | undefined => {
  let layer = new Map([[scope.start, new Set([0])]]);
  for (const [index, cell] of scope.cells.entries()) {
    const next = new Map<string | number, Set<number>>();
    let pairs = 0;
    for (const [state, sums] of layer)
      for (const digit of listOf(about.domains[cell]!)) {
        const after = scope.next(state, digit, index);
        if (after === undefined) continue;
        const into = next.get(after) ?? new Set();
        next.set(after, into);
        for (const sum of sums) into.add(sum + digit);
        pairs += sums.size;
      }
    if (pairs > mostPairs) return undefined;
    layer = next;
  }
  return new Set([...layer].filter(([state]) => scope.ok(state)).flatMap(([, sums]) => [...sums]));
};

const totalOf = (id: string, about: Definition): Total | undefined => {
  const house = about.houses.get(id);
  if (house) return house.complete ? { cells: house.cells, sum: listOf(house.digits).reduce((a, b) => a + b, 0) } : undefined;
  const rule = about.rules.get(id);
  return rule && fixedTotal(rule, about);
};

/** How often each cell is counted: +1 for each plus, -1 for each minus; cells that cancel out are left away. */
const weightsOf = (plus: readonly (readonly Cell[])[], minus: readonly (readonly Cell[])[]): Map<Cell, number> => {
  const weights = new Map<Cell, number>();
  for (const [sign, lists] of [[1, plus], [-1, minus]] as const)
    for (const cells of lists) for (const cell of cells) weights.set(cell, (weights.get(cell) ?? 0) + sign);
  return new Map([...weights].filter(([, weight]) => weight !== 0));
};

/** The weighted cells' digits, each counted by `worth`, make `is`. */
const weighted = (weights: ReadonlyMap<Cell, number>, worth: (digit: number) => number, is: number): Scope => {
  const cells = [...weights.keys()];
  const factors = [...weights.values()];
  return {
    cells,
    start: 0,
    next: (sum, digit, index) => (sum as number) + factors[index]! * worth(digit),
    ok: (sum) => sum === is,
  };
};

const scopesOf = ({ plus, minus }: Count, about: Definition): Scope[] => {
  const [added, taken] = [plus.map((id) => totalOf(id, about)), minus.map((id) => totalOf(id, about))];
  const scopes: Scope[] = [];
  if ([...added, ...taken].every((total) => total !== undefined)) {
    const sum = (totals: readonly (Total | undefined)[]): number => totals.reduce((all, total) => all + total!.sum, 0);
    scopes.push(weighted(weightsOf(added.map((total) => total!.cells), taken.map((total) => total!.cells)), (digit) => digit, sum(added) - sum(taken)));
  }
  const houses = [plus, minus].map((ids) => ids.map((id) => about.houses.get(id)));
  if (houses.flat().every((house) => house?.complete)) {
    const weights = weightsOf(houses[0]!.map((house) => house!.cells), houses[1]!.map((house) => house!.cells));
    const holding = (side: number, digit: number): number => houses[side]!.filter((house) => listOf(house!.digits).includes(digit)).length;
    const digits = new Set(houses.flat().flatMap((house) => listOf(house!.digits)));
    for (const digit of digits) scopes.push(weighted(weights, (other) => (other === digit ? 1 : 0), holding(0, digit) - holding(1, digit)));
  }
  return scopes;
};

/** Every sum and every count of a digit that follows from the listed houses and rules; names that are not listed give none. */
export const countScopes = (because: Because, about: Definition): ReadAlong[] =>
  (because.counts ?? [])
    .filter(({ plus, minus }) => [...plus, ...minus].every((id) => because.houses.includes(id) || because.rules.includes(id)))
    .flatMap((count) => scopesOf(count, about))
    .filter((scope): scope is ReadAlong => "next" in scope);
