import { obeysScope } from "../deduce/obeys-all.ts";
import { type Cell, pairsApart } from "../puzzle/canvas.ts";
import type { Draft, Puzzle, RuleEntry } from "../puzzle/puzzle.ts";
import type { Random } from "../random.ts";
import type { SetBody } from "../rules/bodies/cells.ts";
import type { Body, Kind, Setting } from "../rules/contract.ts";
import { kinds } from "../rules/registry.ts";
import { resolved, settingOf } from "../rules/setting.ts";

/** So many bodies are drawn for the clues of one board. */
const draws = 1500;
/** A board has so many clues of the kind at most. */
const mostClues = 4;

/** What is drawn is nearly always wrong, so the exact checks of what it could be are left to whoever reads the file. */
const looking = (puzzle: Draft): Setting => settingOf(puzzle, kinds, { trusting: true });

/** The puzzle with these bodies of one kind more. */
export const withClues = (puzzle: Puzzle, kind: Kind, bodies: readonly Body[]): Puzzle => {
  const entries = bodies.map((body, k): RuleEntry => ({ id: `${kind.name}/${k + 1}`, kind: kind.name, body }));
  return { ...puzzle, rules: [...puzzle.rules, ...entries] };
};

/** The cells that a clue binds where a filling obeys it; undefined where it doesn't or the clue can't stand there. */
const boundIn = (
  solution: ArrayLike<number>,
  kind: Kind,
  body: Body,
  setting: Setting,
): readonly Cell[] | undefined => {
  const instance = resolved({ id: `${kind.name}/1`, kind: kind.name, body }, kind, setting);
  if ("faults" in instance) return undefined;
  const isObeyed = kind.scopes(instance).every((scope) =>
    obeysScope(
      scope,
      scope.cells.map((cell) => solution[cell]!),
    ),
  );
  return isObeyed ? instance.cells : undefined;
};

/** Every mark of whose absence the kind speaks, wherever the filling has one. */
export const withMarks = (puzzle: Puzzle, { missing }: Kind, solution: ArrayLike<number>): Puzzle => {
  if (!missing) return puzzle;
  const { places } = puzzle.canvas;
  const edges = pairsApart(puzzle.canvas, [
    [0, 1],
    [1, 0],
  ]).map((pair): SetBody => ({ cells: pair.map((cell) => places[cell]!) }));
  const setting = looking(puzzle);
  return kinds
    .filter(({ edgeMark }) => edgeMark === missing.mark)
    .reduce(
      (marked, kind) =>
        withClues(
          marked,
          kind,
          edges.filter((body) => boundIn(solution, kind, body, setting)),
        ),
      puzzle,
    );
};

/** One to four clues of the kind drawn by chance that a filling obeys, no two on the same cells; none where none turn up. */
export const cluesIn = (puzzle: Puzzle, kind: Kind, solution: ArrayLike<number>, random: Random): readonly Body[] => {
  const setting = looking(puzzle);
  const wanted = kind.wholeGrid ? 1 : 1 + random.below(mostClues);
  const taken = new Set<Cell>();
  const clues: Body[] = [];
  for (let drawn = 0; drawn < draws && clues.length < wanted; drawn++) {
    const body: Body | undefined = kind.body.draw!(random, setting);
    const cells = body && boundIn(solution, kind, body, setting);
    if (!cells || cells.some((cell) => taken.has(cell))) continue;
    clues.push(body);
    for (const cell of cells) taken.add(cell);
  }
  return clues;
};

/** A clue by chance that can stand on this board; undefined where chance led nowhere. */
export const clueOn = (puzzle: Puzzle, kind: Kind, random: Random): Body | undefined => {
  const setting = looking(puzzle);
  for (let drawn = 0; drawn < draws; drawn++) {
    const body: Body | undefined = kind.body.draw!(random, setting);
    const instance = body && resolved({ id: `${kind.name}/1`, kind: kind.name, body }, kind, setting);
    if (instance && !("faults" in instance)) return body;
  }
  return undefined;
};
