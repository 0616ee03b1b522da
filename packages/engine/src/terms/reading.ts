import type { Automaton, State } from "./term.ts";

/** The ways on from one number of digits read to the next: by way, `digits` lead from one state to another. */
interface Layer {
  readonly from: number[];
  readonly to: number[];
  readonly digits: number[];
}

interface Forwards {
  readonly layers: readonly Layer[];
  /** By layer, and one after the last: the states that the digits up to there can lead to. */
  readonly states: readonly (readonly State[])[];
}

/** What one layer's states lead to by these digits; two digits of a state that lead alike are one way. */
const layerFrom = (
  states: readonly State[],
  digits: number,
  next: (state: State, digit: number) => State | undefined,
) => {
  const layer: Layer = { from: [], to: [], digits: [] };
  const numbers = new Map<State, number>();
  /** By state led to: the last way there. */
  const ways: number[] = [];
  for (let from = 0; from < states.length; from++) {
    const start = layer.to.length;
    for (let rest = digits; rest !== 0; rest &= rest - 1) {
      const bit = rest & -rest;
      const after = next(states[from]!, 31 - Math.clz32(bit));
      if (after === undefined) continue;
      let to = numbers.get(after);
      if (to === undefined) {
        to = numbers.size;
        numbers.set(after, to);
        ways.push(-1);
      }
      if (ways[to]! >= start) {
        layer.digits[ways[to]!]! |= bit;
        continue;
      }
      ways[to] = layer.to.length;
      layer.from.push(from);
      layer.to.push(to);
      layer.digits.push(bit);
    }
  }
  return { layer, reached: [...numbers.keys()] };
};

const forwards = ({ cells, start, next }: Automaton, digits: Int32Array): Forwards => {
  const layers: Layer[] = [];
  const states: State[][] = [[start]];
  for (let k = 0; k < cells.length; k++) {
    const { layer, reached } = layerFrom(states[k]!, digits[k]!, (state, digit) => next(state, digit, k));
    layers.push(layer);
    states.push(reached);
  }
  return { layers, states };
};

/** Takes the ways out that lead to no `ok` end; false when none is left. */
const dropDeadEnds = ({ layers, states }: Forwards, ok: Automaton["ok"]): boolean => {
  let alive = Uint8Array.from(states.at(-1)!, (state) => (ok(state) ? 1 : 0));
  for (let k = layers.length - 1; k >= 0; k--) {
    const { from, to, digits } = layers[k]!;
    const lives = new Uint8Array(states[k]!.length);
    let kept = 0;
    for (let way = 0; way < to.length; way++) {
      if (!alive[to[way]!]) continue;
      lives[from[way]!] = 1;
      from[kept] = from[way]!;
      to[kept] = to[way]!;
      digits[kept++] = digits[way]!;
    }
    from.length = to.length = digits.length = kept;
    alive = lives;
  }
  return alive[0] === 1;
};

/**
 * Narrows the digits of each cell to those on some way from the start to an `ok` state; false when there is none.
 * `digits` bounds what it will be asked about.
 */
export const readingOf = (term: Automaton, digits: Int32Array): ((now: Int32Array) => boolean) => {
  if (term.cells.length === 0) return () => term.ok(term.start);
  const read = forwards(term, digits);
  const { layers } = read;
  if (!dropDeadEnds(read, term.ok)) return () => false;
  const reached = read.states.map(({ length }) => new Uint8Array(length));
  const alive = reached.map(({ length }) => new Uint8Array(length));
  reached[0]![0] = 1;
  alive.at(-1)!.fill(1);

  const readOn = (k: number, now: number): void => {
    const { from, to, digits } = layers[k]!;
    const before = reached[k]!;
    const after = reached[k + 1]!.fill(0);
    for (let way = 0; way < from.length; way++)
      if ((digits[way]! & now) !== 0 && before[from[way]!] !== 0) after[to[way]!] = 1;
  };
  const readBack = (k: number, now: number): number => {
    const { from, to, digits } = layers[k]!;
    const before = reached[k]!;
    const after = alive[k + 1]!;
    const lives = alive[k]!.fill(0);
    let kept = 0;
    for (let way = 0; way < from.length; way++) {
      const shared = digits[way]! & now;
      if (shared === 0 || before[from[way]!] === 0 || after[to[way]!] === 0) continue;
      kept |= shared;
      lives[from[way]!] = 1;
    }
    return kept;
  };
  return (now) => {
    for (let k = 0; k < now.length; k++) readOn(k, now[k]!);
    for (let k = now.length - 1; k >= 0; k--) now[k] = readBack(k, now[k]!);
    return now[0] !== 0;
  };
};
