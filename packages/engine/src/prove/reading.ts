import type { Digits } from "../board/digits.ts";
import type { Scope } from "../rules/contract.ts";

export type ReadAlong = Extract<Scope, { next: unknown }>;

/** A read-along scope with its states numbered as they are met, so that each transition is asked for once. */
export interface Numbered {
  readonly length: number;
  /** The number of the state after `digit` at `index`, or -1 at a dead end. State 0 is the start. */
  next(state: number, digit: number, index: number): number;
  ok(state: number): boolean;
}

const unknown = -2;
const numberings = new WeakMap<ReadAlong, Numbered>();

/** Numbers the states of a scope; the same numbering is given back for the same scope. */
export const numberedOf = (scope: ReadAlong): Numbered => {
  let numbered = numberings.get(scope);
  if (!numbered) numberings.set(scope, (numbered = numbering(scope)));
  return numbered;
};

const numbering = (scope: ReadAlong): Numbered => {
  const states = [scope.start];
  const numbers = new Map([[scope.start, 0]]);
  const transitions: Int32Array[] = [];
  const row = (state: number): Int32Array => (transitions[state] ??= new Int32Array(32 * scope.cells.length).fill(unknown));
  return {
    length: scope.cells.length,
    next: (state, digit, index) => {
      const known = row(state);
      const slot = index * 32 + digit;
      if (known[slot] !== unknown) return known[slot]!;
      const after = scope.next(states[state]!, digit, index);
      let number = -1;
      if (after !== undefined) {
        number = numbers.get(after) ?? -1;
        if (number < 0) {
          number = states.length;
          states.push(after);
          numbers.set(after, number);
        }
      }
      known[slot] = number;
      return number;
    },
    ok: (state) => scope.ok(states[state]!),
  };
};

/** A place in the reading: the state and, where digits may not repeat, those used so far (bits). */
interface Layer {
  readonly states: readonly number[];
  readonly used: readonly number[];
}

const stepLayer = (numbered: Numbered, { states, used }: Layer, digits: number, index: number, apart: boolean): Layer => {
  const next: { states: number[]; used: number[] } = { states: [], used: [] };
  const seen = new Set<number>();
  for (const [k, state] of states.entries())
    for (let rest = apart ? digits & ~used[k]! : digits; rest !== 0; rest &= rest - 1) {
      const digit = 31 - Math.clz32(rest & -rest);
      const after = numbered.next(state, digit, index);
      if (after < 0) continue;
      const mask = apart ? used[k]! | (1 << digit) : 0;
      const key = after * 2 ** 32 + (mask >>> 0);
      if (seen.has(key)) continue;
      seen.add(key);
      next.states.push(after);
      next.used.push(mask);
    }
  return next;
};

/**
 * The digits at each index from which some path leads from the start to an end that is ok, or undefined where none
 * does. `apart`: no digit is used twice along the way.
 */
export const readable = (numbered: Numbered, domains: readonly number[], apart: boolean): Digits[] | undefined => {
  const layers: Layer[] = [{ states: [0], used: [0] }];
  for (const [index, digits] of domains.entries()) {
    layers.push(stepLayer(numbered, layers[index]!, digits, index, apart));
    if (layers.at(-1)!.states.length === 0) return undefined;
  }
  let alive = new Set<number>();
  const last = layers.at(-1)!;
  for (const [k, state] of last.states.entries()) if (numbered.ok(state)) alive.add(state * 2 ** 32 + (last.used[k]! >>> 0));
  if (alive.size === 0) return undefined;
  const kept = new Array<Digits>(domains.length);
  for (let index = domains.length - 1; index >= 0; index--) {
    const { states, used } = layers[index]!;
    const before = new Set<number>();
    let digits = 0;
    for (const [k, state] of states.entries())
      for (let rest = apart ? domains[index]! & ~used[k]! : domains[index]!; rest !== 0; rest &= rest - 1) {
        const digit = 31 - Math.clz32(rest & -rest);
        const after = numbered.next(state, digit, index);
        if (after < 0 || !alive.has(after * 2 ** 32 + ((apart ? used[k]! | (1 << digit) : 0) >>> 0))) continue;
        digits |= 1 << digit;
        before.add(state * 2 ** 32 + (used[k]! >>> 0));
      }
    kept[index] = digits as Digits;
    alive = before;
  }
  return kept;
};
