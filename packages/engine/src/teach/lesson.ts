import type { Board } from "../board/board.ts";
import { compile } from "../board/compile.ts";
import { type Knowledge, startOf } from "../board/knowledge.ts";
import { after } from "../deduce/after.ts";
import { chainOf } from "../deduce/chain.ts";
import type { Deduction, Technique } from "../deduce/deduction.ts";
import { techniques } from "../deduce/registry.ts";
import { finished } from "../finished.ts";
import { definitionOf } from "../prove/definition.ts";
import { prove } from "../prove/prove.ts";
import { accept } from "../puzzle/accept.ts";
import type { Puzzle } from "../puzzle/puzzle.ts";
import { read } from "../puzzle/read.ts";
import { write } from "../puzzle/write.ts";
import { type Random, randomFrom } from "../random.ts";
import { dug, isSolvedBy, type Sown } from "./dug.ts";
import { filled } from "./filled.ts";
import { type Ground, grounds } from "./grounds.ts";

/** A small puzzle with one solution whose solve takes one technique and otherwise only what every newcomer knows. */
export interface Lesson {
  /** The puzzle file. */
  readonly text: string;
  readonly board: Board;
  /** The step to be taught, proved, and the state in which it is taken. */
  readonly step: Deduction;
  readonly before: Knowledge;
}

/** What a technique can't be shown without. */
const companions: Readonly<Record<string, readonly string[]>> = {
  relation: ["by-relation"],
  "by-relation": ["relation"],
};

/** Techniques of which a lesson can be made: all but the last resort. */
export const teachable: readonly string[] = techniques.map(({ name }) => name);

/** What does the work of a technique wherever it can be used, so that the lesson does without. */
const rivals: Readonly<Record<string, readonly string[]>> = { "smaller-grid-leaves": ["only-place"] };

const isBeginners = (taught: string, { name, level }: Technique): boolean =>
  level === 1 && !(rivals[taught] ?? []).includes(name);

/** What every newcomer knows. */
const beginners = (taught: string): Technique[] =>
  techniques.filter((technique) => isBeginners(taught, technique) && technique.name !== taught);

const ladderOf = (taught: string): Technique[] => {
  const wanted = [taught, ...(companions[taught] ?? [])];
  return techniques.filter((technique) => isBeginners(taught, technique) || wanted.includes(technique.name));
};

/** The file of a ground with these clues, and no givens. */
export const fileOf = (title: string, { grids, rules }: Ground, clues: readonly string[]): string =>
  [
    `puzzle: 1\ntitle: "${title}"\nsetter: { name: Solvewright, permission: own }\ngrids: [${grids}]`,
    ...(rules || clues.length > 0 ? ["rules:"] : []),
    ...(rules ? [`  - ${rules}`] : []),
    ...clues.map((clue) => `  - ${clue}`),
    "",
  ].join("\n");

export const puzzleOf = (text: string): Puzzle | undefined => accept(read(text));

/** A board of the ground with its clues, and a filling that obeys it. */
const sow = (title: string, ground: Ground, random: Random): Sown | undefined => {
  const bare = puzzleOf(fileOf(title, ground, []));
  const solution = bare && filled(compile(bare), random);
  if (!bare || !solution || !ground.clues) return solution && { puzzle: bare, solution };
  const { size } = bare.grids[0]!;
  const clues = ground.clues(random, size, (row, column) => solution[(row - 1) * size + column - 1]!);
  const puzzle = puzzleOf(fileOf(title, ground, clues));
  return puzzle && { puzzle, solution };
};

/** The lesson that a puzzle gives, where its proved solve takes the technique and is not to be had without it. */
const lessonIn = (puzzle: Puzzle, taught: string): Lesson | undefined => {
  const board = compile(puzzle);
  const { level } = techniques.find(({ name }) => name === taught)!;
  if (level > 1 && isSolvedBy(board, beginners(taught))) return undefined;
  const [about, ladder] = [definitionOf(board), ladderOf(taught)];
  const chain = finished(chainOf(board, (claim) => prove(claim, about), { ladder, level: 4 }));
  const steps = chain.bursts.flat();
  const index = steps.findIndex(({ technique }) => technique === taught);
  const isPlain = steps.every(({ technique, assume }) => !assume && ladder.some(({ name }) => name === technique));
  if (!chain.solved || index < 0 || !isPlain) return undefined;
  const before = steps.slice(0, index).reduce((state, step) => after(state, board, step), startOf(board));
  return { text: write(puzzle), board, step: steps[index]!, before };
};

/** The lesson in a puzzle file that was kept; undefined where it is none of that technique. */
export const lessonFrom = (text: string, taught: string): Lesson | undefined => {
  const puzzle = puzzleOf(text);
  return puzzle && lessonIn(puzzle, taught);
};

/** So many boards are looked at on a ground. */
const usualMost = 24;

/**
 * Looks for a lesson, the smallest grounds first; yields how many boards it has looked at. Undefined where none turns up.
 * The same seed gives the same lesson.
 */
export function* findingLesson(taught: string, seed: number): Generator<number, Lesson | undefined> {
  const random = randomFrom(seed);
  const ladder = ladderOf(taught);
  const title = `A lesson: ${taught.replaceAll("-", " ")}`;
  let looked = 0;
  for (const ground of grounds)
    for (let tried = 0; tried < (ground.most ?? usualMost); tried++) {
      yield looked++;
      const sown = sow(title, ground, random);
      const lesson = sown && lessonIn(dug(sown, ladder, random), taught);
      if (lesson) return lesson;
    }
  return undefined;
}
