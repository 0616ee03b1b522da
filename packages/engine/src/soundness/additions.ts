import type { Board } from "../board/board.ts";
import { obeysScope } from "../prove/obeys.ts";
import { type Cell, pairsApart } from "../puzzle/canvas.ts";
import type { Body, Kind, Scope, Setting } from "../rules/contract.ts";
import { settingOf } from "../rules/setting.ts";
import type { Solution } from "../search/run.ts";
import type { NewRule } from "./altered.ts";

/** One thing that could be added: a given or a mark between two cells. */
export type Addition = { readonly cell: Cell; readonly digit: number } | NewRule;

/** An addition and the solutions, by their place in a list, that have or obey it. */
export interface Weighed {
  readonly addition: Addition;
  readonly kept: readonly number[];
}

/** Every given that some of these solutions have and not all. */
export const possibleGivens = (solutions: readonly Solution[]): Weighed[] =>
  [...(solutions[0] ?? [])]
    .flatMap((_, cell) => {
      const byDigit = new Map<number, number[]>();
      for (const [k, solution] of solutions.entries())
        byDigit.set(solution[cell]!, [...(byDigit.get(solution[cell]!) ?? []), k]);
      return [...byDigit].map(([digit, kept]) => ({ addition: { cell, digit }, kept }));
    })
    .filter(({ kept }) => kept.length < solutions.length);

const isEdge = ({ body }: Kind): boolean => body.gesture === "edge";

interface Template {
  readonly kind: Kind;
  /** A body of the puzzle, its cells aside. */
  readonly rest: Body;
}

/** The sorts of marks between two cells that the puzzle has. */
const templatesIn = ({ rules, puzzle }: Board): Template[] => {
  const found = new Map<string, Template>();
  for (const [k, { kind }] of rules.entries()) {
    if (!isEdge(kind)) continue;
    const { cells: _, note: __, ...rest } = puzzle.rules[k]!.body as Body & { readonly cells: unknown };
    found.set(`${kind.name} ${JSON.stringify(rest)}`, { kind, rest });
  }
  return [...found.values()];
};

const sides = [
  [0, 1],
  [1, 0],
] as const;

/** The neighbours without a mark between them, each pair in both orders. */
const openPairs = ({ canvas, rules }: Board): (readonly [Cell, Cell])[] => {
  const marked = new Set(rules.filter(({ kind }) => isEdge(kind)).map(({ cells }) => [...cells].sort().join()));
  return pairsApart(canvas, sides)
    .filter((pair) => !marked.has([...pair].sort().join()))
    .flatMap(([a, b]) => [[a, b] as const, [b, a] as const]);
};

const scopesOf = ({ kind, body }: NewRule, setting: Setting): readonly Scope[] | undefined => {
  const instance = kind.resolve(body, setting);
  return "faults" in instance ? undefined : kind.scopes({ ...instance, id: `${kind.name}/0` });
};

/** Every mark of a sort that the puzzle has which some of these solutions obey and not all. */
export const possibleMarks = (board: Board, solutions: readonly Solution[]): Weighed[] => {
  const { canvas, puzzle, domains } = board;
  const setting = settingOf(
    puzzle,
    board.rules.map(({ kind }) => kind),
  );
  const filled = solutions.map((solution) => Int8Array.from(solution));
  const seen = new Set<string>();
  return templatesIn(board).flatMap(({ kind, rest }, t) =>
    openPairs(board).flatMap((pair): Weighed[] => {
      const addition = { kind, body: { ...rest, cells: pair.map((cell) => canvas.places[cell]!) } };
      const scopes = scopesOf(addition, setting);
      if (!scopes) return [];
      const kept = [...filled.keys()].filter((k) => scopes.every((scope) => obeysScope(scope, filled[k]!, domains)));
      const key = `${t} ${[...pair].sort()} ${kept}`;
      if (seen.has(key) || kept.length === 0 || kept.length === solutions.length) return [];
      seen.add(key);
      return [{ addition, kept }];
    }),
  );
};
