import type { Board } from "../board/board.ts";
import { compile } from "../board/compile.ts";
import type { EdgeMark, Kind, OtherReading } from "../rules/contract.ts";
import { feasibilityIn } from "../rules/feasible.ts";
import { kinds as allKinds } from "../rules/registry.ts";
import type { Solution } from "../search/run.ts";
import { withRules } from "./altered.ts";
import { beside, type Growing } from "./growing.ts";
import { type Judged, type Verdict, verdictOn } from "./verdict.ts";

/**
 * `needed`: ours is what makes the solution the only one. `no difference`: it is the only one either way. `must be said`:
 * whoever reads it the other way finds another solution, or none.
 */
export type Outcome = "needed" | "no difference" | "must be said";

/** A rule that a viewer could read in another way than we do, and what would come of it. */
export interface Assumption {
  /** The other reading, as a clause: "missing dots mean nothing". */
  readonly reading: string;
  /** The kind of rule that is read so, or that would be there. */
  readonly rule: string;
  readonly outcome: Outcome;
  /** With the other reading. */
  readonly verdict: Verdict;
}

interface Reread extends Pick<Assumption, "reading" | "rule"> {
  readonly board: Board;
}

const kindsIn = ({ rules }: Board): Kind[] => [...new Set(rules.map(({ kind }) => kind))];

const readAs = (kind: Kind, { scopes, terms }: OtherReading<never>): Kind => ({
  ...kind,
  scopes: (instance) => scopes(kind.scopes(instance), instance as never),
  terms: (instance) => terms(kind.terms(instance), instance as never),
});

/** Nobody reads a rule in a way in which it can't be met, so such a reading is left out. */
const readOtherwise = (board: Board): Reread[] => {
  const kinds = kindsIn(board);
  const isFeasible = feasibilityIn(board);
  return kinds.flatMap((kind) =>
    (kind.readings ?? []).flatMap((reading): Reread[] => {
      const other = readAs(kind, reading);
      const own = board.rules.filter((rule) => rule.kind === kind);
      if (!own.every(({ instance }) => isFeasible(other.scopes(instance)))) return [];
      const read = kinds.map((each) => (each === kind ? other : each));
      return [{ reading: reading.says, rule: kind.name, board: compile(board.puzzle, read) }];
    }),
  );
};

/** The marks on edges that the file has and of whose absence no rule of it speaks. */
const unspokenMarks = (board: Board): ReadonlySet<EdgeMark> => {
  const kinds = kindsIn(board);
  const marks = new Set(kinds.flatMap(({ edgeMark }) => edgeMark ?? []));
  for (const { missing } of kinds) if (missing) marks.delete(missing.mark);
  return marks;
};

/** The rules that could be meant where nothing is said of missing marks. */
export const unsaidOfMissing = (board: Board, kinds: readonly Kind[]): Kind[] => {
  const marks = unspokenMarks(board);
  return kinds.filter(({ missing }) => missing && marks.has(missing.mark));
};

const readAsMissing = (board: Board, kinds: readonly Kind[]): Reread[] =>
  unsaidOfMissing(board, kinds).flatMap((kind): Reread[] => {
    const other = withRules(board, [{ kind, body: {} }]);
    return other ? [{ reading: kind.missing!.says, rule: kind.name, board: other }] : [];
  });

const isSame = (one: Solution, other: Solution): boolean => one.every((digit, cell) => digit === other[cell]);

const outcomeOf = ({ verdict, solution }: Judged, ours: Solution): Outcome => {
  if (verdict === "several") return "needed";
  return solution && isSame(solution, ours) ? "no difference" : "must be said";
};

/** What each other reading would make of a board whose only solution this is. */
export function* assuming(board: Board, solution: Solution, kinds: readonly Kind[] = allKinds): Growing<Assumption> {
  const known: Assumption[] = [];
  for (const { reading, rule, board: other } of [...readOtherwise(board), ...readAsMissing(board, kinds)]) {
    const judged = yield* beside(known, verdictOn(other));
    if (judged) known.push({ reading, rule, outcome: outcomeOf(judged, solution), verdict: judged.verdict });
  }
  return known;
}
