import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Board, Deduction, Knowledge, Lesson } from "@solvewright/engine";
import { after, claimOf, compile, digitAt, lessonFrom, phrase, startOf, textOf } from "@solvewright/engine";
import { boardSvg } from "@solvewright/press";
import { listOf } from "../../packages/engine/src/board/digits.ts";
import { techniques } from "../../packages/engine/src/deduce/registry.ts";
import { chained } from "../../packages/engine/test-kit/planned.ts";
import { puzzleOf } from "../../packages/engine/test-kit/puzzles.ts";
import { millPond, singles } from "./solves.ts";

/** What the field usually calls it (common practice), where that is another name. */
const usual: Readonly<Record<string, string>> = {
  "only-place": "hidden single",
  "only-digit": "naked single",
  locked: "locked candidates",
  "naked-pair": "naked pair",
  "naked-triple": "naked triple",
  "naked-quad": "naked quad",
  "hidden-pair": "hidden pair",
  "hidden-triple": "hidden triple",
  "sums-left": "innies and outies",
  "x-wing": "X-wing",
  swordfish: "swordfish",
  "xy-wing": "XY-wing",
  "xyz-wing": "XYZ-wing",
  "w-wing": "W-wing",
  "what-if": "bifurcation",
  "long-what-if": "bifurcation",
};

interface Named {
  readonly name: string;
  readonly level: number;
  /** In place of the comment on its module. */
  readonly about?: string;
}

/** The techniques of the ladder, and the last resorts that stand in no list. */
export const named: readonly Named[] = [
  ...techniques,
  {
    name: "what-if",
    level: 4,
    about: "The last resort: a digit is tried in a cell, and within three steps of level 1 or 2 nothing is left.",
  },
  {
    name: "long-what-if",
    level: 5,
    about:
      "The same with more or harder steps, or with what-ifs inside. Each carries its own steps, all of them proved.",
  },
];

const folder = fileURLToPath(new URL("../../packages/engine/src/deduce/techniques/", import.meta.url));
const sources = readdirSync(folder)
  .filter((file) => !file.endsWith(".test.ts"))
  .map((file) => readFileSync(folder + file, "utf8"));

/** The comment that stands last before the technique's name in the file that defines it. */
const commentOn = (name: string): string => {
  const source = sources.find((text) => text.includes(`"${name}"`));
  if (!source) throw new Error(`no file defines ${name}`);
  const comment = source
    .slice(0, source.indexOf(`"${name}"`))
    .match(/\/\*\*(?:(?!\*\/)[\s\S])*\*\//g)
    ?.at(-1);
  if (!comment) throw new Error(`${name} has no comment`);
  return comment
    .slice(3, -2)
    .replace(/\n\s*\*/g, "\n")
    .replace(/\s+/g, " ")
    .trim();
};

interface Example {
  readonly from: string;
  readonly pointing: string;
  readonly placed: string;
  /** The board with the reason drawn, where the example is a lesson. */
  readonly picture?: string;
}

const said = (board: Board, step: Deduction, before: Knowledge) => ({
  pointing: textOf(phrase(step, before, board, "pointing")),
  placed: textOf(phrase(step, before, board, "placed")),
});

const lessons = new URL("../../docs/lessons/", import.meta.url);

/** The board before the step, the marks that it leans on, and the reason. */
const drawn = ({ board, step, before }: Lesson): string => {
  const { names } = board.canvas;
  const settled = names.flatMap((name, cell): [string, number][] => {
    const digit = digitAt(before, cell);
    return digit === undefined ? [] : [[name, digit]];
  });
  const leansOn = [...step.because.facts].filter(([cell]) => digitAt(before, cell) === undefined);
  const told = { n: 1, technique: step.technique, level: step.level, ...claimOf(board, step), say: "", seconds: 0 };
  return `${boardSvg(board, {
    cell: 36,
    painted: true,
    ground: "page",
    label: board.puzzle.title,
    written: {
      settled: Object.fromEntries(settled),
      marks: Object.fromEntries(leansOn.map(([cell, digits]) => [names[cell]!, listOf(digits)])),
    },
    step: told,
  })}\n`;
};

/** The technique's teaching board, which `npm run lessons` has found. */
const lessonOf = (technique: string): Example | undefined => {
  const file = new URL(`${technique}.puzzle.yaml`, lessons);
  const lesson = existsSync(file) ? lessonFrom(readFileSync(file, "utf8"), technique) : undefined;
  if (!lesson) return undefined;
  const from = `From its teaching board, [${technique}.puzzle.yaml](lessons/${technique}.puzzle.yaml).`;
  return { from, ...said(lesson.board, lesson.step, lesson.before), picture: drawn(lesson) };
};

/** The first step of this technique in a solve by it and what every newcomer knows. */
const inSolve = (technique: string): Example | undefined => {
  const board = compile(puzzleOf(millPond));
  const { bursts } = chained(board, { ladder: techniques.filter(({ name }) => singles.includes(name)) });
  let state = startOf(board);
  for (const step of bursts.flat()) {
    if (step.technique === technique) return { from: `From ${board.puzzle.title}.`, ...said(board, step, state) };
    state = after(state, board, step);
  }
  return undefined;
};

/** Measured once, on 25 November 2026, by `npm run how-far` on the cases that lie beside this project. */
const howFar = `## How far the levels come

Of 72 generated puzzles with overlapping grids or with each kind of rule (25 November 2026, \`npm run how-far -- FILES\`)
70 are solved by steps of level 3 or lower, and none takes a what-if. The two others take level 4:

- *kind-anti-king*: three times either way along king's moves, and a colouring, since its clues are those moves alone;
- *kind-clone*: one digit either way between the two shapes.

Of classics, irregular grids, killers and grids with other digits one irregular and one classic grid take a single step of
level 4, and two hard classics what-ifs (2 and 13), where patterns of level 4 give out. Sums without a given (arrows and
little killers over the whole grid) take about a hundred long what-ifs: they are solved and proved, and are no show.
`;

const pictureOf = (name: string): string => `techniques/${name}.svg`;

const entry = ({ name, level, about = commentOn(name) }: Named, example: Example | undefined): string => {
  const called = usual[name] ? ` Usually called: ${usual[name]} (common practice).` : "";
  const shown = example
    ? `${example.picture ? `![${name}](${pictureOf(name)})\n\n` : ""}- Pointing: "${example.pointing}"\n- Placed: "${example.placed}"\n\n${example.from}`
    : "A board that teaches it is still wanted (`npm run lessons`).";
  return `## ${name}\n\nLevel ${level}. ${about}${called}\n\n${shown}\n`;
};

/** The page of techniques and its pictures, by name from the root of the project. */
export const techniquesPage = (): ReadonlyMap<string, string> => {
  const examples = named.map((technique) => ({
    technique,
    example: lessonOf(technique.name) ?? inSolve(technique.name),
  }));
  const page = `# Techniques

Every way of reasoning, in the order in which they are preferred, with what it asks of the audience (1: newcomers who know
the rules, 2: who solve easy ones, 3: who solve variants weekly, 4: who know the named patterns, 5: experts) and its line
in both styles: pointing, for the camera, and placed, for captions and text. The lines are said one step at a time; a
running order joins them. Each is shown on a small board whose solve takes just that technique and otherwise only
singles: \`solvewright teach TECHNIQUE\` makes another one. Made from the registry of techniques by \`npm run docs\`.

${examples.map(({ technique, example }) => entry(technique, example)).join("\n")}
${howFar}`;
  return new Map([
    ["docs/techniques.md", page],
    ...examples.flatMap(({ technique: { name }, example }) =>
      example?.picture ? [[`docs/${pictureOf(name)}`, example.picture] as const] : [],
    ),
  ]);
};
