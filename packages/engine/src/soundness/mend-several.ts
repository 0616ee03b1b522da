import type { Board } from "../board/board.ts";
import type { Kind } from "../rules/contract.ts";
import { kinds as allKinds } from "../rules/registry.ts";
import type { Long } from "../search/long.ts";
import type { Solution } from "../search/run.ts";
import { solving } from "../search/solve.ts";
import { type Addition, possibleGivens, possibleMarks, type Weighed } from "./additions.ts";
import { withGivens, withRules } from "./altered.ts";
import { unsaidOfMissing } from "./assumptions.ts";
import { beside, type Growing } from "./growing.ts";
import { type Mend, mostMends, mostNodesATrial } from "./mend.ts";
import { verdictOn } from "./verdict.ts";

/** Solutions looked at to see what would tell them apart. */
const mostSolutions = 300;
/** Nodes to find them in. */
const mostNodes = 50_000;
/** Of givens or of marks; so that the others have their turn. */
const mostOfASort = 3;
/** Candidates of a sort that are tried by search. */
const mostTrials = 60;

function* sampled(board: Board): Long<readonly Solution[]> {
  const { solutions } = yield* solving(board, { limit: mostSolutions, nodes: mostNodes });
  return solutions;
}

const givensAmong = (additions: readonly Addition[]) =>
  additions.flatMap((addition) => ("cell" in addition ? [[addition.cell, addition.digit] as const] : []));
const rulesAmong = (additions: readonly Addition[]) =>
  additions.flatMap((addition) => ("kind" in addition ? [addition] : []));

const boardWith = (board: Board, additions: readonly Addition[]): Board | undefined =>
  withRules(withGivens(board, new Map(givensAmong(additions))), rulesAmong(additions));

/** The additions as a mend, where they leave exactly one solution. */
function* mendBy(board: Board, additions: readonly Addition[]): Long<Mend | undefined> {
  const mended = boardWith(board, additions);
  const judged = mended && (yield* verdictOn(mended, mostNodesATrial));
  if (judged?.verdict !== "one") return undefined;
  const rules = mended!.puzzle.rules.slice(board.puzzle.rules.length);
  return { change: "add", givens: new Map(givensAmong(additions)), rules, verdict: "one" };
}

/** Those that single out a solution, each solution in turn. */
const inTurn = (weighed: readonly Weighed[]): Addition[] => {
  const counts = new Map<number, number>();
  return weighed
    .filter(({ kept }) => kept.length === 1)
    .map(({ addition, kept: [only] }) => {
      const turn = (counts.get(only!) ?? 0) + 1;
      counts.set(only!, turn);
      return { addition, turn };
    })
    .sort((a, b) => a.turn - b.turn)
    .map(({ addition }) => addition);
};

type Weigh = (board: Board, solutions: readonly Solution[]) => Weighed[];
const givens: Weigh = (_, solutions) => possibleGivens(solutions);

/** The mends among these that are each one addition. */
function* singles(board: Board, additions: readonly Addition[], most: number): Growing<Mend> {
  const found: Mend[] = [];
  for (const [nodes, addition] of additions.slice(0, mostTrials).entries()) {
    yield { nodes, found: found.length, known: found };
    const mend = yield* beside(found, mendBy(board, [addition]));
    if (mend) found.push(mend);
    if (found.length === most) break;
  }
  return found;
}

const fewest = (weighed: readonly Weighed[]): Weighed | undefined =>
  weighed.reduce<Weighed | undefined>(
    (best, each) => (best && best.kept.length <= each.kept.length ? best : each),
    undefined,
  );

/** Adds what tells most solutions apart until there is one; undefined where nothing tells the rest apart. */
function* addedUntilOne(board: Board, weigh: Weigh): Long<Addition[] | undefined> {
  const additions: Addition[] = [];
  for (let now = board; ; ) {
    yield { nodes: 0, found: additions.length };
    let solutions = yield* sampled(now);
    if (solutions.length <= 1) return solutions.length === 1 ? additions : undefined;
    while (solutions.length > 1) {
      const best = fewest(weigh(now, solutions));
      if (!best) return undefined;
      additions.push(best.addition);
      solutions = best.kept.map((k) => solutions[k]!);
    }
    const next = boardWith(board, additions);
    if (!next) return undefined;
    now = next;
  }
}

/** Leaves out what the others do without. */
function* withoutSpare(board: Board, additions: readonly Addition[]): Long<Mend | undefined> {
  let kept = additions;
  let mend = yield* mendBy(board, kept);
  for (const addition of additions) {
    const fewer = kept.filter((other) => other !== addition);
    const smaller = mend && (yield* mendBy(board, fewer));
    if (smaller) [kept, mend] = [fewer, smaller];
  }
  return mend;
}

function* together(board: Board, weigh: Weigh): Long<Mend | undefined> {
  const additions = yield* addedUntilOne(board, weigh);
  return additions && (yield* withoutSpare(board, additions));
}

const keyOf = (addition: Addition): string =>
  "cell" in addition ? `${addition.cell} ${addition.digit}` : JSON.stringify(addition.body);
const keysOf = ({ givens: added, rules }: Mend): string[] => [
  ...[...added].map(([cell, digit]) => keyOf({ cell, digit })),
  ...rules.map(({ body }) => JSON.stringify(body)),
];

/** Several mends, each without what an earlier one adds. */
function* alternatives(board: Board, weigh: Weigh): Growing<Mend> {
  const found: Mend[] = [];
  const used = new Set<string>();
  const unused: Weigh = (now, solutions) => weigh(now, solutions).filter(({ addition }) => !used.has(keyOf(addition)));
  while (found.length < mostOfASort) {
    const mend = yield* beside(found, together(board, unused));
    if (!mend) break;
    found.push(mend);
    for (const key of keysOf(mend)) used.add(key);
  }
  return found;
}

const missingRules = (board: Board, kinds: readonly Kind[]): Addition[] =>
  unsaidOfMissing(board, kinds).map((kind) => ({ kind, body: {} }));

const sizeOf = ({ givens: added, rules }: Mend): number => added.size + rules.length;

/**
 * The smallest additions that leave a board of several solutions with one: a given, a mark of a sort that it has, a rule
 * about missing marks; where none of these is enough, several givens or several marks. Marks come first where it has no
 * givens.
 */
export function* mendingSeveral(board: Board, kinds: readonly Kind[] = allKinds): Growing<Mend> {
  const sorts: readonly Weigh[] = board.givens.size > 0 ? [givens, possibleMarks] : [possibleMarks, givens];
  const found: Mend[] = [];
  const solutions = yield* beside(found, sampled(board));
  for (const weigh of sorts)
    found.push(...(yield* beside(found, singles(board, inTurn(weigh(board, solutions)), mostOfASort))));
  found.push(...(yield* beside(found, singles(board, missingRules(board, kinds), mostMends))));
  if (found.length > 0) return found;
  for (const weigh of sorts) found.push(...(yield* beside(found, alternatives(board, weigh))));
  return found.sort((a, b) => sizeOf(a) - sizeOf(b));
}
