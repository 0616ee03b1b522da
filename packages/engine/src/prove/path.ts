import { count, type Digits } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { type Constraint, type Domains, isSettled } from "./constraint.ts";
import type { Reading } from "./reading.ts";

// Scratch of one look, used by nothing outside it. A node is a state with the digits used on the way to it.
const mostNodes = 1 << 15;
const mostTransitions = 200_000;
const slots = 1 << 16;
const slotKey = new Int32Array(slots);
const slotNode = new Int32Array(slots);
const slotStamp = new Int32Array(slots);
let stamp = 0;
const state = new Int32Array(mostNodes * 2);
const used = new Int32Array(mostNodes * 2);
const from = new Int32Array(mostTransitions + 32);
const to = new Int32Array(mostTransitions + 32);
const by = new Int8Array(mostTransitions + 32);
const alive = new Uint8Array(mostNodes * 2);

/** The slot of this key, or the free one where it would stand. */
const slotOf = (key: number): number => {
  let slot = Math.imul(key, 0x9e3779b1) >>> 16;
  while (slotStamp[slot] === stamp && slotKey[slot] !== key) slot = (slot + 1) & (slots - 1);
  return slot;
};

/** Digits to bits 0 to 9 at the places whose digits differ from each other; elsewhere nothing is remembered. */
export interface Used {
  /** By place: whether its digit is remembered and barred at the later ones. */
  readonly at: readonly boolean[];
  /** By digit. */
  readonly bit: Int8Array;
}

/** How the digits of these places are remembered, or undefined where they are more than ten. */
export const usedAt = (at: readonly boolean[], cells: readonly Cell[], domains: Int32Array): Used | undefined => {
  const digits = cells.reduce((all, cell, place) => (at[place] ? all | domains[cell]! : all), 0);
  if (count(digits as Digits) > 10) return undefined;
  const bit = new Int8Array(32);
  let next = 0;
  for (let rest = digits; rest !== 0; rest &= rest - 1) bit[31 - Math.clz32(rest & -rest)] = next++;
  return { at, bit };
};

type Look = "narrowed" | "none left" | "too wide";

/** One look along the cells, forward over all states that can be reached and back over those that reach an end. */
const look = (reading: Reading, memory: Used | undefined, domains: Domains): Look => {
  const { cells } = reading;
  const ends = new Int32Array(cells.length);
  let transitions = 0;
  let first = 0;
  let past = 1;
  state[0] = 0;
  used[0] = 0;
  for (let place = 0; place < cells.length; place++) {
    const here = domains.at[cells[place]!]!;
    const remembers = memory?.at[place] ?? false;
    let next = past;
    stamp++;
    for (let node = first; node < past; node++) {
      if (transitions > mostTransitions - 32 || next > mostNodes) {
        domains.spend(transitions);
        return "too wide";
      }
      for (let rest = here; rest !== 0; rest &= rest - 1) {
        const digit = 31 - Math.clz32(rest & -rest);
        const bit = remembers ? 1 << memory!.bit[digit]! : 0;
        if ((used[node]! & bit) !== 0) continue;
        const after = reading.step(place, state[node]!, digit);
        if (after < 0) continue;
        const now = used[node]! | bit;
        const key = (after << 10) | now;
        const slot = slotOf(key);
        if (slotStamp[slot] !== stamp) {
          slotStamp[slot] = stamp;
          slotKey[slot] = key;
          slotNode[slot] = next;
          state[next] = after;
          used[next] = now;
          alive[next] = 0;
          next++;
        }
        from[transitions] = node;
        to[transitions] = slotNode[slot]!;
        by[transitions] = digit;
        transitions++;
      }
    }
    ends[place] = transitions;
    first = past;
    past = next;
  }
  domains.spend(transitions);
  for (let node = first; node < past; node++) alive[node] = reading.isOk(state[node]!) ? 1 : 0;
  for (let place = cells.length - 1; place >= 0; place--) {
    let supported = 0;
    for (let k = ends[place]! - 1; k >= (ends[place - 1] ?? 0); k--) {
      if (!alive[to[k]!]) continue;
      alive[from[k]!] = 1;
      supported |= 1 << by[k]!;
    }
    if (!domains.keep(cells[place]!, supported)) return "none left";
  }
  return "narrowed";
};

/**
 * A read-along scope: each digit must lie on a path to a good end. Where that is too wide, the digits used are not
 * remembered; where it still is, the scope waits until its cells are settled.
 */
export const path = (reading: Reading, memory?: Used): Constraint => {
  const { cells } = reading;
  const ways: (Used | undefined)[] = memory ? [memory, undefined] : [undefined];
  const narrow = (domains: Domains): boolean => {
    while (ways.length > 0) {
      const seen = look(reading, ways[0], domains);
      if (seen !== "too wide") return seen === "narrowed";
      ways.shift();
    }
    return !cells.every((cell) => isSettled(domains.at[cell]!)) || look(reading, undefined, domains) === "narrowed";
  };
  return { cells, effort: 2, narrow };
};
