import { oneOfKeys } from "../rules/nearest.ts";
import { shown } from "../rules/shown.ts";

/** A place in the source to which a problem can be pinned. */
export interface Spot {
  /** In characters of the source, from 0. */
  readonly from: number;
  /** Keys and list indices from the root: `rules/2/cage`. */
  readonly path: string;
}

/** Anything that stands in the file alone: a word, a number, a text. */
export interface Scalar extends Spot {
  readonly shape: "scalar";
  /** As YAML reads it: text, number, true or false, null. */
  readonly value: unknown;
  /** As it stands in the source, so that an unquoted line of digits loses nothing; of quoted texts what they say. */
  readonly text: string;
  /** Where a character of `text` stands in the source. */
  spotAt(index: number): Spot;
}
export interface List extends Spot {
  readonly shape: "list";
  readonly items: readonly Tree[];
}
export interface Entry {
  readonly key: string;
  readonly keySpot: Spot;
  readonly value: Tree;
}
export interface Keys extends Spot {
  readonly shape: "keys";
  /** In file order; no key twice. */
  readonly entries: readonly Entry[];
}
/** What YAML made of the file, each part with its place. */
export type Tree = Scalar | List | Keys;

/** Takes a problem. It gives nothing back, so that who tells can end with it: `return tell(...)`. */
export type Tell = (spot: Spot, read: string, right: string) => undefined;

/** Nothing stands there: `rules:` and no more. */
export const isNothing = (tree: Tree | undefined): boolean =>
  tree === undefined || (tree.shape === "scalar" && tree.value === null && tree.text === "");

const entryOf = (keys: Keys, key: string): Entry | undefined => keys.entries.find((entry) => entry.key === key);
export const under = (keys: Keys, key: string): Tree | undefined => entryOf(keys, key)?.value;

/** As plain values. */
export const plainOf = (tree: Tree): unknown => {
  if (tree.shape === "list") return tree.items.map(plainOf);
  if (tree.shape === "keys") return Object.fromEntries(tree.entries.map(({ key, value }) => [key, plainOf(value)]));
  return tree.value;
};

/** The part that these keys and indices lead to, or the last that they reach. */
export const treeAt = (tree: Tree, [step, ...steps]: readonly (string | number)[]): Tree => {
  if (step === undefined) return tree;
  const next =
    tree.shape === "list" ? tree.items[Number(step)] : tree.shape === "keys" ? under(tree, String(step)) : undefined;
  return next ? treeAt(next, steps) : tree;
};

/** Tells every key that is not among the known. */
export const onlyKeys = (keys: Keys, known: readonly string[], tell: Tell): void => {
  for (const { key, keySpot } of keys.entries)
    if (!known.includes(key)) tell(keySpot, shown(key), oneOfKeys(key, known));
};
