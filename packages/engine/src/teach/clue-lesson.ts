import type { Board } from "../board/board.ts";
import { compile } from "../board/compile.ts";
import { startOf } from "../board/knowledge.ts";
import { after } from "../deduce/after.ts";
import { chainOf } from "../deduce/chain.ts";
import type { Deduction } from "../deduce/deduction.ts";
import { techniques } from "../deduce/registry.ts";
import { finished } from "../finished.ts";
import { definitionOf } from "../prove/definition.ts";
import { prove } from "../prove/prove.ts";
import type { Puzzle } from "../puzzle/puzzle.ts";
import { write } from "../puzzle/write.ts";
import { type Random, randomFrom } from "../random.ts";
import type { Kind } from "../rules/contract.ts";
import { kindNamed, kinds } from "../rules/registry.ts";
import { count } from "../search/count.ts";
import { clueOn, cluesIn, withClues, withMarks } from "./clues.ts";
import { dug, isSolvedBy, type Sown } from "./dug.ts";
import { filled } from "./filled.ts";
import type { Ground } from "./grounds.ts";
import { fileOf, type Lesson, puzzleOf } from "./lesson.ts";

/** Kinds of rule of which a lesson can be made: all whose meaning is not the setter's own. */
export const teachableKinds: readonly string[] = kinds.filter(({ body }) => body.draw).map(({ name }) => name);

/** Singles, and what one clue does with the houses that its cells share. */
const wanted = ["last-cell", "only-place", "only-digit", "clue-forces", "clue-cases", "only-place-by-clues"];
const ladder = techniques.filter(({ name }) => wanted.includes(name));

/** The smallest first; so many boards of each are looked at. The last is for what only nine digits can hold. */
const grounds: readonly (Ground & { readonly most: number })[] = [
  { grids: "{ id: main, size: 4 }", most: 12 },
  { grids: "{ id: main, size: 6 }", most: 40 },
  { grids: "{ id: main, size: 6, regions: none }", most: 24 },
  { grids: "{ id: main, size: 9 }", most: 40 },
];

/** A filling and clues that it obeys; where few fillings obey any, a clue first and then a filling that obeys it. */
const sow = (bare: Puzzle, kind: Kind, random: Random): Sown | undefined => {
  const solution = filled(compile(bare), random);
  const marked = solution && withMarks(bare, kind, solution);
  const clues = marked ? cluesIn(marked, kind, solution, random) : [];
  if (clues.length > 0) return { puzzle: withClues(marked!, kind, clues), solution: solution! };
  const clue = kind.missing ? undefined : clueOn(bare, kind, random);
  const puzzle = clue && withClues(bare, kind, [clue]);
  const obeying = puzzle && filled(compile(puzzle), random);
  return obeying && { puzzle, solution: obeying };
};

const numbered = (puzzle: Puzzle, { name }: Kind): Puzzle => {
  let k = 0;
  return {
    ...puzzle,
    rules: puzzle.rules.map((rule) => (rule.kind === name ? { ...rule, id: `${name}/${++k}` } : rule)),
  };
};

/** The puzzle without the clues of this kind that its solve does without. */
const withoutSpare = (puzzle: Puzzle, kind: Kind): Puzzle => {
  const isNeeded = (rules: Puzzle["rules"]): boolean => !isSolvedBy(compile({ ...puzzle, rules }), ladder);
  const rules = puzzle.rules
    .filter((rule) => rule.kind === kind.name)
    .reduce((kept, rule) => {
      const fewer = kept.filter((other) => other !== rule);
      return isNeeded(fewer) ? kept : fewer;
    }, puzzle.rules);
  return numbered({ ...puzzle, rules }, kind);
};

/** Whether the step leans on clues of this kind, and on no others. */
const leansOn = (board: Board, { because, assume }: Deduction, kind: string): boolean => {
  const made = because.houses.flatMap((id) => board.house(id)?.rule ?? []);
  const rules = [...because.rules, ...made];
  return !assume && rules.length > 0 && rules.every((id) => board.rule(id)!.kind.name === kind);
};

const isOneWithout = (puzzle: Puzzle, kind: string): boolean =>
  count(compile({ ...puzzle, rules: puzzle.rules.filter((rule) => rule.kind !== kind) }), 2).count === 1;

/** The lesson that a puzzle gives, where its proved solve leans on clues of the kind and there would be several without. */
const lessonIn = (puzzle: Puzzle, kind: string): Lesson | undefined => {
  if (isOneWithout(puzzle, kind)) return undefined;
  const board = compile(puzzle);
  const about = definitionOf(board);
  const chain = finished(chainOf(board, (claim) => prove(claim, about), { ladder, level: 2 }));
  const steps = chain.bursts.flat();
  const index = steps.findIndex((step) => leansOn(board, step, kind));
  if (!chain.solved || index < 0) return undefined;
  const before = steps.slice(0, index).reduce((state, step) => after(state, board, step), startOf(board));
  return { text: write(puzzle), board, step: steps[index]!, before };
};

/**
 * Looks for a small puzzle with this kind of rule whose key step leans on it alone, the rest being singles and steps of
 * its like, and that has several solutions without; yields how many boards it has looked at. Undefined where none turns
 * up. The same seed gives the same lesson.
 */
export function* findingClueLesson(name: string, seed: number): Generator<number, Lesson | undefined> {
  const random = randomFrom(seed);
  const kind = kindNamed(name)!;
  const title = `A lesson: ${name.replaceAll("-", " ")}`;
  let looked = 0;
  for (const ground of grounds)
    for (let tried = 0; tried < ground.most; tried++) {
      yield looked++;
      const sown = sow(puzzleOf(fileOf(title, ground, []))!, kind, random);
      // Read anew, since what was drawn was not looked at as closely as what a setter writes.
      const puzzle = sown && puzzleOf(write(withoutSpare(dug(sown, ladder, random), kind)));
      const lesson = puzzle && lessonIn(puzzle, name);
      if (lesson) return lesson;
    }
  return undefined;
}
