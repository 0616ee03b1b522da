import { shown } from "../rules/shown.ts";
import { isNothing, plainOf, type Scalar, type Tell, type Tree } from "./tree.ts";

/** How a part of the file is shown in a message. */
export const shownTree = (tree: Tree): string => {
  if (isNothing(tree)) return "nothing";
  return tree.shape === "scalar" ? shown(tree.text) : shown(plainOf(tree));
};

interface TextLimits {
  readonly right: string;
  /** Characters. */
  readonly most: number;
}

/** A text as it stands in the source; undefined (and told) where it is none or too long. */
export const readText = (tree: Tree, { right, most }: TextLimits, tell: Tell): string | undefined => {
  const text = tree.shape === "scalar" ? (tree as Scalar).text : "";
  if (text.trim() === "") return tell(tree, shownTree(tree), right);
  if (text.length > most) return tell(tree, `${text.length} characters`, `${right}, at most ${most} characters`);
  return text;
};
