import { domainsOf } from "../rules/cells.ts";
import type { Kind } from "../rules/contract.ts";
import { kinds as allKinds } from "../rules/registry.ts";
import { settingOf } from "../rules/setting.ts";
import { canvasOf } from "./canvas.ts";
import { readSetters } from "./credits.ts";
import { readGivens } from "./givens.ts";
import { readGrids, tellNoCommonDigit } from "./grids.ts";
import { mostProblems, sourceOf, telling } from "./problems.ts";
import type { Draft, Problem } from "./puzzle.ts";
import { readRules, tellRemarks, tellUnmeetable } from "./rules.ts";
import { parse } from "./source.ts";
import { readText, shownTree } from "./texts.ts";
import { isNothing, type Keys, onlyKeys, type Tell, type Tree, under } from "./tree.ts";

/** What was understood of a text, and everything that is wrong with it, in the order of the file. */
export interface Reading {
  readonly draft: Draft;
  readonly problems: readonly Problem[];
  /** What is read all the same but deserves a second look. */
  readonly remarks: readonly Problem[];
}

const empty: Draft = { title: "Untitled", setters: [], grids: [], canvas: canvasOf([]), givens: new Map(), rules: [] };

const keys = ["puzzle", "title", "setter", "wording", "notes", "grids", "givens", "rules"];

const start = "a puzzle, which starts with puzzle: 1";

const tellVersion = (file: Keys, tell: Tell): void => {
  const version = under(file, "puzzle");
  if (!version) tell(file, "a file without a version", "puzzle: 1 as its first key");
  else if (version.shape !== "scalar" || version.value !== 1)
    tell(version, shownTree(version), "1, the version of the format");
};

const longText = (tree: Tree | undefined, right: string, tell: Tell): string | undefined =>
  tree && !isNothing(tree) && !(tree.shape === "scalar" && tree.text.trim() === "")
    ? readText(tree, { right, most: 20_000 }, tell)
    : undefined;

const readTitle = (file: Keys, tell: Tell, remark: Tell): string => {
  const tree = under(file, "title");
  if (!tree || isNothing(tree)) remark(tree ?? file, "no title", "a title; it is called Untitled until then");
  const title = tree && !isNothing(tree) ? readText(tree, { right: "the puzzle's title", most: 200 }, tell) : undefined;
  return title?.trim() ?? empty.title;
};

const readFile = (file: Keys, kinds: readonly Kind[], tell: Tell, remark: Tell): Draft => {
  onlyKeys(file, keys, tell);
  tellVersion(file, tell);
  const wording = longText(under(file, "wording"), "the rules in the setter's words", tell);
  const notes = longText(under(file, "notes"), "notes", tell);
  const { grids: read, placed } = readGrids(under(file, "grids"), file, tell);
  const grids = read.map(({ grid }) => grid);
  const canvas = canvasOf(grids);
  const draft = {
    title: readTitle(file, tell, remark),
    setters: readSetters(under(file, "setter"), tell),
    ...(wording === undefined ? {} : { wording }),
    ...(notes === undefined ? {} : { notes }),
    grids,
    canvas,
  };
  // Where a grid's place is unknown, every cell would be told as off the canvas.
  const ground = { canvas, grids, domains: domainsOf({ canvas, grids }) };
  if (placed) tellNoCommonDigit(read, canvas.grids, tell);
  const givens = readGivens(placed ? under(file, "givens") : undefined, ground, tell);
  const rules = readRules(under(file, "rules"), placed ? canvas : undefined, kinds, mostProblems, tell);
  const whole: Draft = { ...draft, givens, rules: rules.map(({ entry }) => entry) };
  const setting = settingOf(whole, kinds);
  tellUnmeetable(rules, setting, mostProblems, tell);
  tellRemarks(rules, setting, remark);
  return whole;
};

/** Reads a puzzle file. Never throws on a text, whatever it holds: what is wrong is told, all of it together. */
export const read = (text: string, { kinds = allKinds }: { readonly kinds?: readonly Kind[] } = {}): Reading => {
  const source = sourceOf(text);
  const [problems, remarks, ignored] = [telling(), telling(), telling()];
  const { tree, sound } = parse(source, start, problems.tell);
  const { tell } = sound ? problems : ignored;
  const isFile = tree?.shape === "keys";
  if (tree && !isFile) tell(tree, shownTree(tree), start);
  const draft = isFile ? readFile(tree, kinds, tell, remarks.tell) : empty;
  return { draft, problems: problems.problems(source), remarks: remarks.problems(source) };
};
