import type { Board } from "../board/board.ts";
import { both, type Digits, isWithin, none } from "../board/digits.ts";
import { isSettled, type Knowledge } from "../board/knowledge.ts";
import { claimOf } from "../deduce/claim.ts";
import type { Deduction } from "../deduce/deduction.ts";
import type { Prove } from "../deduce/judge.ts";
import { shrink } from "../deduce/shrink.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Said } from "./read-claim.ts";

/** What comes of a viewer's own deduction, held to a board. */
export type Judged =
  /** It follows: `step` has the reasons that it needs; `spare` was named and is not needed. */
  | { readonly verdict: "sound"; readonly step: Deduction; readonly spare: readonly string[] }
  /** It follows once these houses and rules are named too, or once these cells are known to hold what was said. */
  | {
      readonly verdict: "missing";
      readonly step: Deduction;
      readonly missing: readonly string[];
      readonly unshown: readonly Cell[];
    }
  /** It does not follow: these digits obey all that was named, and not what was concluded. None: nothing obeys it. */
  | { readonly verdict: "unsound"; readonly counterexample?: Readonly<Record<string, number>> }
  /** Too big to judge. */
  | { readonly verdict: "unknown" };

interface Judging {
  readonly board: Board;
  readonly known: Knowledge;
  readonly said: Said;
  readonly prove: Prove;
}

const cellsOf = (board: Board, id: string): readonly Cell[] => board.house(id)?.cells ?? board.rule(id)?.cells ?? [];

/** The deduction on these names; what the board shows of the cells that they touch counts as said. */
const deductionOn = ({ board, known, said }: Judging, names: readonly string[], assumed: Said["facts"]): Deduction => {
  const touched = [
    ...names.flatMap((id) => cellsOf(board, id)),
    ...said.places.keys(),
    ...said.removes.keys(),
    ...said.facts.keys(),
  ];
  const facts = new Map<Cell, Digits>();
  for (const cell of [...new Set(touched)].sort((a, b) => a - b)) {
    const left = both(known.possible[cell]!, assumed.get(cell) ?? known.possible[cell]!);
    if (left !== board.domains[cell]) facts.set(cell, left);
  }
  return {
    technique: "claimed",
    level: 1,
    places: said.places,
    removes: said.removes,
    spots: [],
    relates: [],
    because: {
      facts,
      spots: [],
      relations: [],
      houses: names.filter((id) => board.house(id)),
      rules: names.filter((id) => board.rule(id)),
    },
  };
};

const holdsBy =
  ({ board, prove }: Judging) =>
  (deduction: Deduction): boolean =>
    prove(claimOf(board, deduction)).verdict === "proved";

/** What may have been left unsaid, the nearest first: what holds a concluded cell, then what meets the names. */
const candidates = ({ board, said }: Judging): string[] => {
  const concluded = new Set([...said.places.keys(), ...said.removes.keys()]);
  const near = new Set([...concluded, ...said.names.flatMap((id) => cellsOf(board, id))]);
  const all = [...board.houses, ...board.rules.filter(({ leftOut }) => !leftOut)];
  const others = all.filter(({ id }) => !said.names.includes(id));
  const rank = (cells: readonly Cell[]): number =>
    cells.some((cell) => concluded.has(cell)) ? 0 : cells.some((cell) => near.has(cell)) ? 1 : 2;
  return others
    .map(({ id, cells }) => ({ id, rank: rank(cells) }))
    .sort((a, b) => a.rank - b.rank)
    .map(({ id }) => id);
};

/** Two reasons are looked for among so many. */
const mostPaired = 24;

/** The first one or two more names with which it follows. */
const missingFrom = (judging: Judging, assumed: Said["facts"]): readonly string[] | undefined => {
  const { said } = judging;
  const names = candidates(judging);
  const follows = (more: readonly string[]): boolean =>
    holdsBy(judging)(deductionOn(judging, [...said.names, ...more], assumed));
  const single = names.find((id) => follows([id]));
  if (single !== undefined) return [single];
  const few = names.slice(0, mostPaired);
  for (const [k, first] of few.entries())
    for (const second of few.slice(k + 1)) if (follows([first, second])) return [first, second];
  return undefined;
};

const small = (judging: Judging, deduction: Deduction): Deduction =>
  shrink(deduction, judging.board, holdsBy(judging)) ?? deduction;

const namesIn = ({ because }: Deduction): string[] => [...because.houses, ...because.rules];

/** Whether a digit that stands in the house (or clue) is why a fact of the step lacks it: then it was named with good reason. */
const isSeenThrough = ({ board, known }: Judging, { because }: Deduction, id: string): boolean => {
  const cells = cellsOf(board, id);
  const standing = cells.filter((cell) => isSettled(known, cell)).map((cell) => known.possible[cell]!);
  return [...because.facts].some(
    ([cell, digits]) => cells.includes(cell) && standing.some((digit) => both(digit, digits) === none),
  );
};

/** Facts that the board does not show. */
const unshownIn = ({ known, said }: Judging): Map<Cell, Digits> =>
  new Map([...said.facts].filter(([cell, digits]) => !isWithin(known.possible[cell]!, digits)));

const nothing: Said["facts"] = new Map();

/** Judges a deduction from a board by the prover alone: nobody looks at the solution, so nothing is given away. */
export const judgeClaim = (board: Board, known: Knowledge, said: Said, prove: Prove): Judged => {
  const judging: Judging = { board, known, said, prove };
  const plain = deductionOn(judging, said.names, nothing);
  const verdict = prove(claimOf(board, plain));
  if (verdict.verdict === "proved") {
    const step = small(judging, plain);
    const isUsed = (id: string): boolean => namesIn(step).includes(id) || isSeenThrough(judging, step, id);
    return { verdict: "sound", step, spare: said.names.filter((id) => !isUsed(id)) };
  }
  const unshown = unshownIn(judging);
  if (unshown.size > 0) {
    const assuming = deductionOn(judging, said.names, unshown);
    if (holdsBy(judging)(assuming))
      return { verdict: "missing", step: small(judging, assuming), missing: [], unshown: [...unshown.keys()] };
  }
  const missing = missingFrom(judging, nothing);
  if (missing) {
    const step = small(judging, deductionOn(judging, [...said.names, ...missing], nothing));
    return { verdict: "missing", step, missing: missing.filter((id) => namesIn(step).includes(id)), unshown: [] };
  }
  if (verdict.verdict === "too big") return { verdict: "unknown" };
  return { verdict: "unsound", ...(verdict.counterexample ? { counterexample: verdict.counterexample } : {}) };
};
