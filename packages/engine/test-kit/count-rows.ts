import type { Scope } from "../src/rules/contract.ts";

type Reading = Extract<Scope, { start: unknown }>;

/** How many orders of these digits, each once, the read-along scope accepts: counted over what is used and its state. */
export const countRows = (scope: Reading, digits: readonly number[]): number => {
  let ways = new Map<string, { readonly used: number; readonly state: Reading["start"]; readonly count: number }>([
    ["", { used: 0, state: scope.start, count: 1 }],
  ]);
  digits.forEach((_, index) => {
    const further: typeof ways = new Map();
    for (const { used, state, count } of ways.values())
      digits.forEach((digit, k) => {
        const reached = (used >> k) & 1 ? undefined : scope.next(state, digit, index);
        if (reached === undefined) return;
        const key = `${used | (1 << k)} ${reached}`;
        further.set(key, { used: used | (1 << k), state: reached, count: count + (further.get(key)?.count ?? 0) });
      });
    ways = further;
  });
  return [...ways.values()].reduce((sum, { state, count }) => (scope.ok(state) ? sum + count : sum), 0);
};
