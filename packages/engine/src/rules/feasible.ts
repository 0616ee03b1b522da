import { count, type Digits, listOf } from "../board/digits.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { State } from "../terms/term.ts";
import { digitsIn } from "./cells.ts";
import type { Scope, Setting } from "./contract.ts";

/**
 * How many partial fillings are tried of one rule, and of all rules of a file, before a rule counts as one that can be met.
 * Where many scopes are read at once, a filling counts as several.
 */
const mostTries = 20_000;
const mostTriesInAll = 400_000;
const readAtOnce = 3;
/** A rule of more scopes that hang together is taken to be possible. */
const mostScopes = 1000;

/** A scope as it is read along the cells in their common order: what it remembers, `undefined` once it is broken. */
interface Reader {
  readonly start: State;
  read(state: State, cell: Cell, digit: number): State | undefined;
}

const isAlong = (cells: readonly Cell[], order: ReadonlyMap<Cell, number>): boolean =>
  cells.every((cell, k) => k === 0 || order.get(cells[k - 1]!)! < order.get(cell)!);

/** Reads digits one cell at a time and judges them all at the last; what it remembers is the digits themselves. */
const atTheEnd = (
  cells: readonly Cell[],
  judge: (digits: readonly number[]) => boolean,
  order: ReadonlyMap<Cell, number>,
): Reader => {
  const sorted = [...cells].sort((a, b) => order.get(a)! - order.get(b)!);
  return {
    start: "",
    read: (state, cell, digit) => {
      const so = state === "" ? `${digit}` : `${state},${digit}`;
      if (cell !== sorted.at(-1)) return so;
      const digits = so.split(",").map(Number);
      return judge(cells.map((other) => digits[sorted.indexOf(other)]!)) ? "done" : undefined;
    },
  };
};

const readerOf = (scope: Scope, order: ReadonlyMap<Cell, number>): Reader => {
  const { cells } = scope;
  if ("different" in scope)
    return {
      start: 0,
      read: (used, _, digit) => (((used as number) >>> digit) & 1 ? undefined : (used as number) | (1 << digit)),
    };
  if ("holds" in scope) return atTheEnd(cells, scope.holds, order);
  if (!isAlong(cells, order)) {
    const end = (digits: readonly number[]): State | undefined =>
      digits.reduce<State | undefined>(
        (state, digit, k) => (state === undefined ? state : scope.next(state, digit, k)),
        scope.start,
      );
    return atTheEnd(cells, (digits) => end(digits) !== undefined && scope.ok(end(digits)!), order);
  }
  const last = cells.length - 1;
  const place = new Map(cells.map((cell, k) => [cell, k]));
  return {
    start: scope.start,
    read: (state, cell, digit) => {
      const index = place.get(cell)!;
      const next = scope.next(state, digit, index);
      return next === undefined || (index === last && !scope.ok(next)) ? undefined : next;
    },
  };
};

const longestFirst = (a: Scope, b: Scope): number => b.cells.length - a.cells.length;

/** The cells in an order in which most scopes can be read along. */
const orderOf = (scopes: readonly Scope[]): Cell[] => {
  const reading = scopes.filter((scope) => "start" in scope).sort(longestFirst);
  return [
    ...new Set([...reading, ...scopes.filter((scope) => "holds" in scope), ...scopes].flatMap(({ cells }) => cells)),
  ];
};

const isCrowded = (scope: Scope, setting: Pick<Setting, "domains">): boolean =>
  "different" in scope && scope.cells.length > count(digitsIn(setting, scope.cells));

/** What becomes of one reader at a cell: where its state stands among those before (-1: it starts) and after (-1: it is through). */
interface Part {
  readonly reader: Reader;
  readonly reads: boolean;
  readonly from: number;
  readonly to: number;
}

/** A cell of the order, and the readers that are not through before it. */
interface Step {
  readonly cell: Cell;
  readonly digits: readonly number[];
  readonly parts: readonly Part[];
}

/** How many steps there are, and each once it is wanted: where many scopes are read at once, they take much room. */
interface Steps {
  readonly length: number;
  at(k: number): Step;
}

const stepsOf = (scopes: readonly Scope[], domains: readonly Digits[]): Steps => {
  const cells = orderOf(scopes);
  const order = new Map(cells.map((cell, k) => [cell, k]));
  const starting = cells.map((): { reader: Reader; own: ReadonlySet<Cell>; last: number }[] => []);
  for (const scope of scopes) {
    const places = scope.cells.map((cell) => order.get(cell)!).sort((a, b) => a - b);
    const one = { reader: readerOf(scope, order), own: new Set(scope.cells), last: places.at(-1)! };
    starting[places[0]!]!.push(one);
  }
  let open: (typeof starting)[number] = [];
  const stepAt = (k: number): Step => {
    const cell = cells[k]!;
    const all = [...open, ...starting[k]!];
    const before = open.length;
    const kept = all.filter(({ last }) => last > k);
    const places = new Map(kept.map((one, to) => [one, to]));
    const parts = all.map((one, from): Part => {
      const { reader, own } = one;
      return { reader, reads: own.has(cell), from: from < before ? from : -1, to: places.get(one) ?? -1 };
    });
    open = kept;
    return { cell, digits: listOf(domains[cell]!), parts };
  };
  const steps: Step[] = [];
  const at = (k: number): Step => {
    while (steps.length <= k) steps.push(stepAt(steps.length));
    return steps[k]!;
  };
  return { length: cells.length, at };
};

/** What the readers make of a digit in the cell, `undefined` once one is broken; those that are through forget all. */
const readOn = ({ cell, parts }: Step, before: readonly State[], digit: number): State[] | undefined => {
  const after: State[] = [];
  for (const { reader, reads, from, to } of parts) {
    const state = from < 0 ? reader.start : before[from]!;
    const read = reads ? reader.read(state, cell, digit) : state;
    if (read === undefined) return undefined;
    if (to >= 0) after[to] = read;
  }
  return after;
};

interface Search {
  readonly met: boolean;
  readonly tries: number;
}

/** Depth first with a path of its own: lines may be longer than the stack is deep. */
const search = (scopes: readonly Scope[], domains: readonly Digits[], most: number): Search => {
  const steps = stepsOf(scopes, domains);
  const failed = Array.from({ length: steps.length }, () => new Set<string>());
  const path = [{ states: [] as readonly State[], memory: "", tried: 0 }];
  let tries = 0;
  while (path.length > 0 && path.length <= steps.length) {
    const [k, at] = [path.length - 1, path.at(-1)!];
    const step = steps.at(k);
    const digit = step.digits[at.tried++];
    if (digit === undefined) {
      failed[k]!.add(at.memory);
      path.pop();
      continue;
    }
    tries += 1 + Math.floor(step.parts.length / readAtOnce);
    if (tries > most) return { met: true, tries };
    const states = readOn(step, at.states, digit);
    const memory = states?.join(";");
    if (states && memory !== undefined && !failed[k + 1]?.has(memory)) path.push({ states, memory, tried: 0 });
  }
  return { met: path.length > 0, tries };
};

/** Scopes that share cells, directly or by way of others, together: what is in two of these has nothing to do with each other. */
const bound = (scopes: readonly Scope[]): Scope[][] => {
  const joined = new Map<Cell, Cell>();
  const root = (cell: Cell): Cell => {
    let top = cell;
    while (joined.has(top)) top = joined.get(top)!;
    for (let low = cell; low !== top; ) {
      const next = joined.get(low)!;
      joined.set(low, top);
      low = next;
    }
    return top;
  };
  for (const { cells } of scopes)
    for (const cell of cells) if (root(cell) !== root(cells[0]!)) joined.set(root(cell), root(cells[0]!));
  const groups = new Map<Cell, Scope[]>();
  for (const scope of scopes) {
    const top = root(scope.cells[0]!);
    const group = groups.get(top);
    if (group) group.push(scope);
    else groups.set(top, [scope]);
  }
  return [...groups.values()];
};

/** Whether some digits of these cells obey all the scopes; see `feasibilityIn`. */
export const isFeasible = (scopes: readonly Scope[], setting: Pick<Setting, "domains">): boolean =>
  feasibilityIn(setting)(scopes);

/**
 * Judges rules of one file: whether some digits of the cells obey all of a rule's scopes, houses left aside. Exact unless
 * it takes more than 20,000 partial fillings (400,000 for all rules asked): then it is taken to be so. Fillings that
 * leave every scope with the same memory are tried once.
 */
export const feasibilityIn = (setting: Pick<Setting, "domains">): ((scopes: readonly Scope[]) => boolean) => {
  let left = mostTriesInAll;
  return (scopes) => {
    if (scopes.some((scope) => isCrowded(scope, setting))) return false;
    let own = Math.min(mostTries, left);
    return bound(scopes).every((group) => {
      if (own <= 0 || group.length > mostScopes) return true;
      const { met, tries } = search(group, setting.domains, own);
      own -= tries;
      left -= tries;
      return met;
    });
  };
};
