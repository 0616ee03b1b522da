import type { Digits } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Scope } from "../rules/contract.ts";

export type ReadScope = Extract<Scope, { start: unknown }>;
type State = ReadScope["start"];

/** A read-along scope with its states numbered place by place, unfolded as far as it was needed. Starts in state 0. */
export interface Reading {
  readonly cells: readonly Cell[];
  /** The state after this digit at this place (from 0), or -1: a dead end. */
  step(place: number, state: number, digit: number): number;
  isOk(state: number): boolean;
}

interface Layer {
  readonly states: State[];
  readonly numbers: Map<State, number>;
  /** By 32 * state + digit. */
  next: Int32Array;
}

const unread = -2;
const deadEnd = -1;

const numbered = (layer: Layer, state: State): number => {
  const before = layer.numbers.get(state);
  if (before !== undefined) return before;
  const number = layer.states.length;
  layer.states.push(state);
  layer.numbers.set(state, number);
  if (layer.next.length < 32 * (number + 1)) {
    const longer = new Int32Array(2 * layer.next.length).fill(unread);
    longer.set(layer.next);
    layer.next = longer;
  }
  return number;
};

const emptyLayer = (): Layer => ({ states: [], numbers: new Map(), next: new Int32Array(32 * 8).fill(unread) });

/** More states than this are not unfolded ahead: they are read when a search comes to them. */
const mostStates = 4000;

export const readingOf = (scope: ReadScope, domains: readonly Digits[]): Reading => {
  const { cells } = scope;
  const layers = Array.from({ length: cells.length + 1 }, emptyLayer);
  numbered(layers[0]!, scope.start);
  const last = layers[cells.length]!;

  const read = (place: number, state: number, digit: number): number => {
    const layer = layers[place]!;
    const after = scope.next(layer.states[state]!, digit, place);
    const number = after === undefined ? deadEnd : numbered(layers[place + 1]!, after);
    layer.next[32 * state + digit] = number;
    return number;
  };
  const step = (place: number, state: number, digit: number): number => {
    const known = layers[place]!.next[32 * state + digit]!;
    return known === unread ? read(place, state, digit) : known;
  };
  const isOk = (state: number): boolean => scope.ok(last.states[state]!);

  const readAhead = (): boolean => {
    let states = 0;
    for (let place = 0; place < cells.length; place++) {
      const layer = layers[place]!;
      states += layer.states.length;
      if (states > mostStates) return false;
      for (let state = 0; state < layer.states.length; state++)
        for (let rest = domains[cells[place]!]! as number; rest !== 0; rest &= rest - 1)
          read(place, state, 31 - Math.clz32(rest & -rest));
    }
    return true;
  };
  // Steps into states from which no end is in reach are dead ends as well.
  const closeDeadEnds = (): void => {
    let alive = Uint8Array.from(last.states, (state) => (scope.ok(state) ? 1 : 0));
    for (let place = cells.length - 1; place >= 0; place--) {
      const { states, next } = layers[place]!;
      const here = new Uint8Array(states.length);
      for (let k = 0; k < 32 * states.length; k++) {
        if (next[k]! < 0) continue;
        if (alive[next[k]!]) here[k >> 5] = 1;
        else next[k] = deadEnd;
      }
      alive = here;
    }
  };
  if (readAhead()) closeDeadEnds();
  return { cells, step, isOk };
};
