import { canvasOf } from "../src/puzzle/canvas.ts";
import type { Draft, Grid } from "../src/puzzle/puzzle.ts";
import type { Body, Bound, Faulty, Kind, Named, Scope } from "../src/rules/contract.ts";
import { resolved, settingOf } from "../src/rules/setting.ts";

const one = (size: number): Grid => ({
  id: "tiny",
  called: "the grid",
  size,
  row: 1,
  column: 1,
  digits: Array.from({ length: size }, (_, k) => k + 1),
});

/** What the value behind `kind:` in the file is resolved to, on one plain grid of digits 1 to size, or on these grids. */
export const resolvedOn = <B extends Body, I extends Bound>(
  kind: Kind<B, I>,
  value: unknown,
  on: number | readonly Grid[],
  id = `${kind.name}/1`,
): (I & Named) | Faulty => {
  const grids = typeof on === "number" ? [one(on)] : on;
  const canvas = canvasOf(grids);
  const [read] = kind.body.read(value, canvas);
  if (!read?.body || read.faults.length > 0) throw new Error(`${kind.name}: ${JSON.stringify(read)}`);
  const rules = [{ id, kind: kind.name, body: read.body }];
  const draft: Draft = { title: "", setters: [], grids, canvas, givens: new Map(), rules };
  return resolved(rules[0]!, kind, settingOf(draft, [kind])) as (I & Named) | Faulty;
};

/** The same, where it is known to be sound. */
export const instanceOn = <B extends Body, I extends Bound>(
  kind: Kind<B, I>,
  value: unknown,
  on: number | readonly Grid[],
  id?: string,
): I & Named => {
  const instance = resolvedOn(kind, value, on, id);
  if ("faults" in instance) throw new Error(`${kind.name}: ${JSON.stringify(instance.faults)}`);
  return instance;
};

/** What a scope says of digits by cell. */
export const obeysScope = (scope: Scope, digitAt: (cell: number) => number): boolean => {
  const digits = scope.cells.map(digitAt);
  if ("different" in scope) return new Set(digits).size === digits.length;
  if ("holds" in scope) return scope.holds(digits);
  let state: string | number | undefined = scope.start;
  for (const [index, digit] of digits.entries()) {
    state = scope.next(state, digit, index);
    if (state === undefined) return false;
  }
  return scope.ok(state);
};
