import type { Cell } from "../puzzle/canvas.ts";
import { choose, type Open } from "./choose.ts";
import type { Constraint, Domains } from "./constraint.ts";
import { isSettled, lowest } from "./constraint.ts";
import type { Problem } from "./problem.ts";

/** By `Cell`: the digit, or -1 where the cell is not touched. */
export type Values = Int8Array;
export type Found = Values | "none" | "too big";

/** A search that can be asked again and again about one problem, each time with something more demanded. */
export interface Session {
  /** An assignment that obeys the problem, what `demand` narrows to, and `more`. */
  find(demand?: (domains: Domains) => boolean, more?: readonly Constraint[]): Found;
}

/** How many nodes each try of a question has before it starts again with failure weights. */
const tries = [2_000, 4_000, Number.POSITIVE_INFINITY];
/** So many transitions looked at along scopes count as one more node. */
const transitionsPerNode = 2_000;

/** Domains that can be taken back, and the constraints that wait for a look. */
const storeOf = (problem: Problem, spend: Domains["spend"]) => {
  const at = problem.start.slice();
  const constraints: Constraint[] = [];
  const watch: number[][] = [];
  for (const cell of problem.cells) watch[cell] = [];
  const failures = new Float64Array(at.length);
  const trail: number[] = [];
  const waiting: boolean[] = [];
  const [cheap, middle, dear]: [number[], number[], number[]] = [[], [], []];
  const queues = [cheap, middle, dear] as const;

  const enqueue = (k: number): void => {
    if (waiting[k]) return;
    waiting[k] = true;
    queues[constraints[k]!.effort].push(k);
  };
  const keep = (cell: Cell, digits: number): boolean => {
    const was = at[cell]!;
    const now = was & digits;
    if (now === was) return true;
    if (now === 0) return false;
    trail.push(cell, was);
    at[cell] = now;
    const watchers = watch[cell]!;
    for (let k = 0; k < watchers.length; k++) enqueue(watchers[k]!);
    return true;
  };
  const domains: Domains = { at, keep, spend };
  const post = (constraint: Constraint): void => {
    const k = constraints.push(constraint) - 1;
    for (const cell of constraint.cells) watch[cell]!.push(k);
    enqueue(k);
  };
  const unpost = (): void => {
    for (const cell of constraints.pop()!.cells) watch[cell]!.pop();
  };
  const undo = (mark: number): void => {
    while (trail.length > mark) {
      const was = trail.pop()!;
      at[trail.pop()!] = was;
    }
    for (const queue of queues) for (; queue.length > 0; ) waiting[queue.pop()!] = false;
  };
  /** Lets every constraint that waits have its look; false where one sees that nothing is left. */
  const narrow = (): boolean => {
    for (;;) {
      const k = cheap.pop() ?? middle.pop() ?? dear.pop();
      if (k === undefined) return true;
      waiting[k] = false;
      const constraint = constraints[k]!;
      if (constraint.narrow(domains)) continue;
      for (const cell of constraint.cells) failures[cell]!++;
      return false;
    }
  };
  const isBound = (cell: Cell): boolean => watch[cell]!.length > 0;
  return { domains, failures, post, unpost, undo, narrow, isBound, mark: () => trail.length };
};

/** Starts a search; `nodes` is the budget of all its questions together. */
export const sessionOf = (problem: Problem, nodes: number): Session => {
  const { cells } = problem;
  let left = nodes;
  const store = storeOf(problem, (transitions) => {
    left -= transitions / transitionsPerNode;
  });
  const { domains, post, unpost, undo, narrow, mark } = store;
  const { at, keep } = domains;
  problem.constraints.forEach(post);
  const isDead = cells.some((cell) => at[cell] === 0) || !narrow();

  const valuesNow = (): Values => {
    const values = new Int8Array(at.length).fill(-1);
    for (const cell of cells) values[cell] = lowest(at[cell]!);
    return values;
  };
  /** Searches below what is demanded until `until` nodes are left. */
  const dive = (open: Open, until: number): Found => {
    for (;;) {
      if (!narrow()) return "none";
      const choice = choose(open);
      if (!choice) return valuesNow();
      if (left <= until) return "too big";
      left--;
      const before = mark();
      if (keep(choice.cell, 1 << choice.digit)) {
        const found = dive(open, until);
        if (found !== "none") return found;
      }
      undo(before);
      if (!keep(choice.cell, ~(1 << choice.digit))) return "none";
    }
  };
  const search = (open: Open): Found => {
    const before = mark();
    for (const share of tries) {
      const found = dive(open, Math.max(0, left - share));
      if (found !== "too big" || left <= 0) return found;
      undo(before);
      open = { ...open, weights: store.failures.map((count) => 1 + count) };
    }
    return "too big";
  };
  const find: Session["find"] = (demand = () => true, more = []) => {
    if (isDead) return "none";
    const before = mark();
    more.forEach(post);
    const open = cells.filter((cell) => store.isBound(cell) && !isSettled(at[cell]!));
    const { places } = problem;
    const found = demand(domains) && narrow() ? search({ cells: open, places, at, weights: undefined }) : "none";
    undo(before);
    more.forEach(unpost);
    return found;
  };
  return { find };
};
