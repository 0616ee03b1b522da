import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Deduction } from "@solvewright/engine";
import { after, compile, phrase, startOf, textOf } from "@solvewright/engine";
import { techniques } from "../../packages/engine/src/deduce/registry.ts";
import { chained } from "../../packages/engine/test-kit/planned.ts";
import { puzzleOf } from "../../packages/engine/test-kit/puzzles.ts";
import { type Solve, solvesAfter } from "./solves.ts";

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
  readonly title: string;
  readonly pointing: string;
  readonly placed: string;
}

const examplesOf = ({ puzzle, by }: Solve): [technique: string, example: Example][] => {
  const board = compile(puzzleOf(puzzle));
  const { bursts } = chained(board, { ladder: techniques.filter(({ name }) => by.includes(name)) });
  let state = startOf(board);
  return bursts.flat().map((deduction: Deduction) => {
    const said = (style: "pointing" | "placed"): string => textOf(phrase(deduction, state, board, style));
    const example = { title: board.puzzle.title, pointing: said("pointing"), placed: said("placed") };
    state = after(state, board, deduction);
    return [deduction.technique, example];
  });
};

const rainGauge = (): string =>
  readFileSync(fileURLToPath(new URL("../../examples/rain-gauge.puzzle.yaml", import.meta.url)), "utf8");

/** Of each technique the first step found. */
const examples = (): ReadonlyMap<string, Example> => {
  const found = new Map<string, Example>();
  for (const solve of solvesAfter(rainGauge()))
    for (const [technique, example] of examplesOf(solve)) if (!found.has(technique)) found.set(technique, example);
  return found;
};

const entry = ({ name, level, about = commentOn(name) }: Named, example: Example | undefined): string => {
  const called = usual[name] ? ` Usually called: ${usual[name]} (common practice).` : "";
  const shown = example
    ? `- Pointing: "${example.pointing}"\n- Placed: "${example.placed}"\n\nFrom ${example.title}.`
    : "A solve that shows it is still wanted (scripts/docs/solves.ts).";
  return `## ${name}\n\nLevel ${level}. ${about}${called}\n\n${shown}\n`;
};

export const techniquesPage = (): string => {
  const shown = examples();
  return `# Techniques

Every way of reasoning, in the order in which they are preferred, with what it asks of the audience (1: newcomers who know
the rules, 2: who solve easy ones, 3: who solve variants weekly, 4: who know the named patterns, 5: experts) and a line
from a solve, in both styles: pointing, for the camera, and placed, for captions and text. The lines are said one step at
a time; a running order joins them. Made from the registry of techniques by \`npm run docs\`.

${named.map((technique) => entry(technique, shown.get(technique.name))).join("\n")}`;
};
