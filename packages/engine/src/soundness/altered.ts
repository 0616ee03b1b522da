import type { Board } from "../board/board.ts";
import { compile } from "../board/compile.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Puzzle, RuleEntry } from "../puzzle/puzzle.ts";
import type { Body, Kind } from "../rules/contract.ts";
import { kinds as allKinds } from "../rules/registry.ts";
import { resolved, settingOf } from "../rules/setting.ts";

export interface NewRule {
  readonly kind: Kind;
  readonly body: Body;
}

/** The board's kinds, each once, and these. */
const kindsWith = ({ rules }: Board, more: readonly Kind[] = []): Kind[] => [
  ...new Set([...rules.map(({ kind }) => kind), ...more]),
];

/** The rules as a file would have them that has these too. */
const entriesWith = ({ rules }: Puzzle, more: readonly NewRule[]): RuleEntry[] => {
  const counts = new Map<string, number>();
  const count = (name: string): number => counts.set(name, (counts.get(name) ?? 0) + 1).get(name)!;
  for (const { kind } of rules) count(kind);
  return [...rules, ...more.map(({ kind: { name }, body }) => ({ id: `${name}/${count(name)}`, kind: name, body }))];
};

/** The board with these rules as well; undefined where one can't be. */
export const withRules = (board: Board, more: readonly NewRule[]): Board | undefined => {
  const kinds = kindsWith(
    board,
    more.map(({ kind }) => kind),
  );
  const puzzle: Puzzle = { ...board.puzzle, rules: entriesWith(board.puzzle, more) };
  const setting = settingOf(puzzle, kinds);
  const added = puzzle.rules.slice(board.puzzle.rules.length);
  const canBe = added.every((entry, k) => !("faults" in resolved(entry, more[k]!.kind, setting)));
  return canBe ? compile(puzzle, kinds) : undefined;
};

/** The same with rules that are sure to be possible, their ids as they have them. */
export const withEntries = (board: Board, more: readonly RuleEntry[], kinds: readonly Kind[] = allKinds): Board =>
  compile({ ...board.puzzle, rules: [...board.puzzle.rules, ...more] }, kindsWith(board, kinds));

/** The board with these givens as well. */
export const withGivens = (board: Board, more: ReadonlyMap<Cell, number>): Board => {
  const givens = new Map([...board.givens, ...more]);
  return { ...board, givens, puzzle: { ...board.puzzle, givens } };
};

/** The board as it is when these rules (by id) and givens are taken out of its file. */
export const without = (board: Board, rules: ReadonlySet<string>, cells: ReadonlySet<Cell>): Board => {
  const { puzzle } = board;
  const givens = new Map([...puzzle.givens].filter(([cell]) => !cells.has(cell)));
  return compile({ ...puzzle, givens, rules: puzzle.rules.filter(({ id }) => !rules.has(id)) }, kindsWith(board));
};
