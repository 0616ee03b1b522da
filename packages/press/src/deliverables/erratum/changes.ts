import { type Board, capital, cellNamed, fileForm, nounsFor, type RuleEntry } from "@solvewright/engine";
import { creditOf } from "../credit.ts";
import { clueText, gridText } from "../puzzle-in-words.ts";
import { oneLine } from "../texts.ts";

/** One thing that was published wrong; what was left out has nothing `published`, what was too much nothing `right`. */
export interface Correction {
  readonly published?: string;
  readonly right?: string;
  /** The same in a few words, where the right text is long. */
  readonly brief?: string;
}

const changed = (published: string, right: string): Correction[] => (published === right ? [] : [{ published, right }]);

const given = ({ puzzle, canvas }: Board, name: string): number | undefined => {
  const cell = cellNamed(canvas, name);
  return cell === undefined ? undefined : puzzle.givens.get(cell);
};

const givenText = (board: Board, name: string): string =>
  `${capital(nounsFor(board, "placed").cell(cellNamed(board.canvas, name)!))}: given ${given(board, name)}.`;

const givenChanges = (was: Board, now: Board): Correction[] => {
  const names = [...new Set([...now.canvas.names, ...was.canvas.names])];
  return names
    .filter((name) => given(was, name) !== given(now, name))
    .map((name) => ({
      ...(given(was, name) === undefined ? {} : { published: givenText(was, name) }),
      ...(given(now, name) === undefined ? {} : { right: givenText(now, name) }),
    }));
};

/** Two rules are the same where the file says the same of them. */
const keyOf = (board: Board, rule: RuleEntry): string =>
  JSON.stringify(fileForm(board, { givens: new Map(), rules: [rule] }));

const ruleText = (board: Board, id: string): string => {
  const rule = board.rule(id)!;
  return rule.cells.length > 0 ? clueText(board, rule) : oneLine(rule.kind.words(rule.instance).rule);
};

/** Rules of the one that the other has not; of two alike in the one, one alike in the other takes away one. */
const without = (one: Board, other: Board): RuleEntry[] => {
  const left = other.puzzle.rules.map((rule) => keyOf(other, rule));
  return one.puzzle.rules.filter((rule) => {
    const at = left.indexOf(keyOf(one, rule));
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
};

const cellsOf = (board: Board, { id }: RuleEntry): string =>
  board
    .rule(id)!
    .cells.map((cell) => board.canvas.names[cell]!)
    .sort()
    .join();

/** A rule that went and one that came are one change where they are of one kind and lie in the same cells. */
const ruleChanges = (was: Board, now: Board): Correction[] => {
  const came = without(now, was);
  const gone = without(was, now).map((rule): Correction => {
    const published = ruleText(was, rule.id);
    const at = came.findIndex((other) => other.kind === rule.kind && cellsOf(now, other) === cellsOf(was, rule));
    const [instead] = at < 0 ? [] : came.splice(at, 1);
    return instead ? { published, right: ruleText(now, instead.id) } : { published };
  });
  return [...gone, ...came.map((rule) => ({ right: ruleText(now, rule.id) }))];
};

const gridsText = ({ puzzle: { grids } }: Board): string =>
  grids.map((grid) => `${gridText(grid)} Top left in row ${grid.row}, column ${grid.column} of the whole.`).join(" ");

const regionChanges = (was: Board, now: Board): Correction[] => {
  const maps = ({ puzzle }: Board): string => JSON.stringify(puzzle.grids.map(({ regions }) => regions ?? null));
  const isSameSize = gridsText(was) === gridsText(now);
  return isSameSize && maps(was) !== maps(now)
    ? [{ right: "The regions, as they are drawn now.", brief: "The regions have been drawn anew." }]
    : [];
};

const texts = {
  wording: {
    title: "The rules in the setter's words",
    brief: "The rules text has been put right; see the description.",
  },
  notes: { title: "What the setter adds", brief: "The setter's note has been put right; see the description." },
} as const;

const wordingChanges = ({ puzzle: was }: Board, { puzzle: now }: Board): Correction[] =>
  (["wording", "notes"] as const).flatMap((key): Correction[] => {
    const [before, after] = [was[key]?.trim() ?? "", now[key]?.trim() ?? ""];
    const { title, brief } = texts[key];
    if (before === after) return [];
    return after === "" ? [{ published: `${title}: ${before}`, brief }] : [{ right: `${title}: ${after}`, brief }];
  });

/** Everything in which the right puzzle differs from the one that was published, texts first. */
export const correctionsIn = (was: Board, now: Board): Correction[] => [
  ...changed(`Title: ${oneLine(was.puzzle.title)}`, `Title: ${oneLine(now.puzzle.title)}`),
  ...changed(`Credit: ${creditOf(was.puzzle)}`, `Credit: ${creditOf(now.puzzle)}`),
  ...wordingChanges(was, now),
  ...changed(gridsText(was), gridsText(now)),
  ...regionChanges(was, now),
  ...givenChanges(was, now),
  ...ruleChanges(was, now),
];
