import { type Digits, listOf } from "../board/digits.ts";
import type { Automaton, State } from "./term.ts";

/** One way on from a state: these digits lead to the state of that number in the next layer. */
interface Edge {
  digits: number;
  readonly to: number;
}
type Layer = readonly (readonly Edge[])[];

/** Layer k: the states that the first k digits can lead to, with the edges out of them. */
const forwards = ({ cells, start, next }: Automaton, digits: Int32Array): { layers: Edge[][][]; last: State[] } => {
  const layers: Edge[][][] = [];
  let states: State[] = [start];
  for (let k = 0; k < cells.length; k++) {
    const numbers = new Map<State, number>();
    layers.push(
      states.map((state) => {
        const edges = new Map<number, Edge>();
        for (const digit of listOf(digits[k] as Digits)) {
          const after = next(state, digit, k);
          if (after === undefined) continue;
          if (!numbers.has(after)) numbers.set(after, numbers.size);
          const to = numbers.get(after)!;
          const edge = edges.get(to);
          if (edge) edge.digits |= 1 << digit;
          else edges.set(to, { digits: 1 << digit, to });
        }
        return [...edges.values()];
      }),
    );
    states = [...numbers.keys()];
  }
  return { layers, last: states };
};

/** The same reading without dead ends and with one state for all that read on alike; -1 stands for a dead end. */
const reduced = ({ layers, last }: { layers: Edge[][][]; last: State[] }, ok: Automaton["ok"]): Layer[] => {
  let renumbered: number[] = last.map((state) => (ok(state) ? 0 : -1));
  const smaller: Layer[] = [];
  for (const layer of layers.reverse()) {
    const alike = new Map<string, number>();
    const kept: Edge[][] = [];
    const numbers = layer.map((edges) => {
      const merged = new Map<number, Edge>();
      for (const { digits, to: old } of edges) {
        const to = renumbered[old]!;
        if (to < 0) continue;
        const edge = merged.get(to);
        if (edge) edge.digits |= digits;
        else merged.set(to, { digits, to });
      }
      if (merged.size === 0) return -1;
      const list = [...merged.values()].sort((a, b) => a.to - b.to);
      const key = list.map(({ digits, to }) => `${digits}>${to}`).join();
      const number = alike.get(key);
      if (number !== undefined) return number;
      alike.set(key, kept.length);
      kept.push(list);
      return kept.length - 1;
    });
    renumbered = numbers;
    smaller.unshift(kept);
  }
  return smaller;
};

/**
 * Narrows the digits of each cell to those on some way from the start to an `ok` state; false when there is none.
 * `digits` bounds what it will be asked about.
 */
export const readingOf = (term: Automaton, digits: Int32Array): ((now: Int32Array) => boolean) => {
  if (term.cells.length === 0) return () => term.ok(term.start);
  const layers = reduced(forwards(term, digits), term.ok);
  const reached = [...layers, [[]]].map((layer) => new Uint8Array(Math.max(1, layer.length)));
  const alive = reached.map((layer) => new Uint8Array(layer.length));
  if (layers.some((layer) => layer.length === 0)) return () => false;
  reached[0]![0] = 1;
  alive.at(-1)![0] = 1;

  const read = (k: number, digits: number): void => {
    const to = reached[k + 1]!.fill(0);
    for (const [state, edges] of layers[k]!.entries())
      if (reached[k]![state]) for (const edge of edges) if ((edge.digits & digits) !== 0) to[edge.to] = 1;
  };
  const readBack = (k: number, digits: number): number => {
    const from = alive[k]!.fill(0);
    let kept = 0;
    for (const [state, edges] of layers[k]!.entries())
      if (reached[k]![state])
        for (const edge of edges)
          if ((edge.digits & digits) !== 0 && alive[k + 1]![edge.to]) {
            kept |= edge.digits & digits;
            from[state] = 1;
          }
    return kept;
  };
  return (now) => {
    for (let k = 0; k < now.length; k++) read(k, now[k]!);
    for (let k = now.length - 1; k >= 0; k--) now[k] = readBack(k, now[k]!);
    return now[0] !== 0;
  };
};
