import { techniques } from "../../deduce/registry.ts";
import { sourceOf, telling } from "../../puzzle/problems.ts";
import type { Problem } from "../../puzzle/puzzle.ts";
import { parse } from "../../puzzle/source.ts";
import { readText, shownTree } from "../../puzzle/texts.ts";
import { isNothing, type Keys, onlyKeys, plainOf, type Tell, type Tree, under } from "../../puzzle/tree.ts";
import { withNearest } from "../../rules/nearest.ts";
import { kinds } from "../../rules/registry.ts";
import { belowWhatIfs } from "./reasoning.ts";
import { type Wish, wishSchema } from "./wish.ts";

/** What a presenter asks of a running order, and what the audience knows already, as a file keeps it. */
export interface WishList {
  readonly wishes: readonly Wish[];
  /** Rule kinds and techniques, by their names, that the audience has met in earlier shows. */
  readonly met: readonly string[];
}

/** How each wish is written. */
export const wishForms = {
  first: "{ wish: first, cell: r4c5 }",
  feature: "{ wish: feature, cell: r4c5 }, or with rule: cage/2 or technique: x-wing in place of the cell",
  "without-technique": "{ wish: without-technique, technique: x-wing }",
  "without-step": "{ wish: without-step, step: { technique: naked-pair, cell: r4c5, by: [row/4] } }",
  level: "{ wish: level, most: 3 }",
  later: "{ wish: later, grid: lower }",
  corner: "{ wish: corner, grid: main, corner: top-left }, or another corner",
  another:
    "{ wish: another, cell: r4c5, than: [{ technique: naked-pair, cell: r4c5, by: [row/4] }] }, or with way: { technique: only-place, by: [row/4] } in place of than, and for digits that are taken out gone: { r4c5: [1, 2] } in place of the cell",
  words: '{ wish: words, cell: r4c5, say: "What is to be said" }',
} satisfies Record<Wish["wish"], string>;

const wishNames = Object.keys(wishForms);
const start = "a list of wishes, which starts with wishes: 1";

const readWish = (tree: Tree, tell: Tell): Wish[] => {
  const { success, data } = wishSchema.safeParse(plainOf(tree));
  if (success) return [data];
  const named = tree.shape === "keys" ? under(tree, "wish") : undefined;
  const name = named?.shape === "scalar" ? named.text : "";
  const isKnown = wishNames.includes(name);
  if (isKnown) tell(tree, shownTree(tree), wishForms[name as Wish["wish"]]);
  else
    tell(
      named ?? tree,
      shownTree(named ?? tree),
      withNearest(`one of the wishes ${wishNames.join(", ")}`, name, wishNames),
    );
  return [];
};

const itemsOf = (tree: Tree | undefined, right: string, tell: Tell): readonly Tree[] => {
  if (!tree || isNothing(tree)) return [];
  return tree.shape === "list" ? tree.items : (tell(tree, shownTree(tree), right) ?? []);
};

const names = [...kinds.map(({ name }) => name), ...techniques.map(({ name }) => name), ...Object.keys(belowWhatIfs)];
const aName = "the name of a rule kind or a technique";

const readName = (tree: Tree, tell: Tell): string[] => {
  const name = readText(tree, { right: aName, most: 60 }, tell);
  if (name === undefined || names.includes(name)) return name === undefined ? [] : [name];
  return tell(tree, shownTree(tree), withNearest(aName, name, names)) ?? [];
};

const readList = (file: Keys, tell: Tell): WishList => {
  onlyKeys(file, ["wishes", "ask", "met"], tell);
  const version = under(file, "wishes");
  if (version?.shape !== "scalar" || version.value !== 1)
    tell(version ?? file, version ? shownTree(version) : "no version", start);
  return {
    wishes: itemsOf(under(file, "ask"), "a list of wishes", tell).flatMap((tree) => readWish(tree, tell)),
    met: itemsOf(under(file, "met"), "a list of names", tell).flatMap((tree) => readName(tree, tell)),
  };
};

/** Reads a file of wishes. Never throws on a text: what is wrong is told, all of it together. */
export const readWishes = (text: string): WishList & { readonly problems: readonly Problem[] } => {
  const source = sourceOf(text);
  const { tell, problems } = telling();
  const { tree, sound } = parse(source, start, tell);
  if (tree && sound && tree.shape !== "keys") tell(tree, shownTree(tree), start);
  const list = tree?.shape === "keys" && sound ? readList(tree, tell) : { wishes: [], met: [] };
  return { ...list, problems: problems(source) };
};
