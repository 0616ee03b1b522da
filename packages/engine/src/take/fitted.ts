import type * as z from "zod/mini";
import { shownTree } from "../puzzle/texts.ts";
import { onlyKeys, type Tell, type Tree, treeAt } from "../puzzle/tree.ts";

type Form<Value> = z.ZodMiniType<Value> & { readonly shape: Readonly<Record<string, unknown>> };

/**
 * What a form makes of a tree; undefined, and told at its place, where it does not fit. The messages of the form's own
 * parts say what would be right.
 */
export const fitted = <Value>(form: Form<Value>, tree: Tree, tell: Tell, plain: unknown): Value | undefined => {
  const { success, data, error } = form.safeParse(plain);
  if (success) return data;
  if (tree.shape === "keys") onlyKeys(tree, Object.keys(form.shape), tell);
  for (const { code, path, message } of error.issues) {
    if (code === "unrecognized_keys" && path.length === 0) continue;
    const part = treeAt(tree, path as (string | number)[]);
    const isThere = part !== tree || tree.shape !== "keys";
    tell(part, isThere ? shownTree(part) : `no ${path.join("/")}`, message);
  }
  return undefined;
};
