import type { Board } from "../board/board.ts";
import { type Clash, findingClash } from "../search/clash.ts";
import type { Long } from "../search/long.ts";
import { without } from "./altered.ts";
import { beside, type Growing } from "./growing.ts";
import { smallestHitting } from "./hitting-sets.ts";
import { type Mend, mostMends, mostNodesATrial } from "./mend.ts";
import { verdictOn } from "./verdict.ts";

/** A rule by its id or a given by its cell. */
type Item = string | number;

/** More to be taken away than this is no mend but another puzzle. */
const mostItems = 6;

const rulesIn = (items: readonly Item[]): Set<string> =>
  new Set(items.filter((item): item is string => typeof item === "string"));
const cellsIn = (items: readonly Item[]): Set<number> =>
  new Set(items.filter((item): item is number => typeof item === "number"));

/** The board without these demands; its file, and so what marks are there, stays as it is. */
const freed = (board: Board, items: readonly Item[]): Board => ({
  ...board,
  rules: board.rules.filter(({ id }) => !rulesIn(items).has(id)),
  givens: new Map([...board.givens].filter(([cell]) => !cellsIn(items).has(cell))),
});

/** What could be taken away of a clash. */
const itemsOf = ({ rules, givens }: Clash): readonly Item[] => [...rules, ...givens];

function* trying(board: Board, items: readonly Item[]): Long<Mend | undefined> {
  const [rules, cells] = [rulesIn(items), cellsIn(items)];
  const judged = yield* verdictOn(without(board, rules, cells), mostNodesATrial);
  if (!judged || judged.verdict === "none") return undefined;
  return {
    change: "remove",
    givens: new Map([...board.givens].filter(([cell]) => cells.has(cell))),
    rules: board.puzzle.rules.filter(({ id }) => rules.has(id)),
    verdict: judged.verdict,
  };
}

const oneFirst = (mends: readonly Mend[]): Mend[] =>
  [...mends].sort((a, b) => Number(a.verdict !== "one") - Number(b.verdict !== "one"));

/**
 * The fewest rules and givens to take out of a board without a solution so that it has some. What hits every clash known
 * is tried; where it is not enough, a clash is left that it does not hit. `clash`: one that is known already.
 */
export function* mendingNone(board: Board, clash?: Clash): Growing<Mend> {
  const found: Mend[] = [];
  const tried: (readonly Item[])[] = [];
  const clashes = [itemsOf(clash ?? (yield* beside(found, findingClash(board))))];
  let size = mostItems;
  while (found.length < mostMends) {
    const items = smallestHitting(clashes, tried, size);
    if (!items) break;
    yield { nodes: tried.length, found: found.length, known: found };
    const rest = freed(board, items);
    const judged = yield* beside(found, verdictOn(rest, mostNodesATrial));
    if (judged?.verdict === "none") {
      clashes.push(itemsOf(yield* beside(found, findingClash(rest))));
      continue;
    }
    tried.push(items);
    const mend = yield* beside(found, trying(board, items));
    if (!mend) continue;
    found.push(mend);
    size = items.length;
  }
  return oneFirst(found);
}
