import type { Kind } from "../rules/contract.ts";
import { kinds as allKinds, kindNamed } from "../rules/registry.ts";
import { fnv1a } from "./fnv1a.ts";
import type { Draft, RuleEntry } from "./puzzle.ts";

/** JSON with the keys in alphabetical order and in ASCII alone. */
const canonical = (value: unknown): string => {
  if (Array.isArray(value)) return `[${value.map(canonical).join()}]`;
  if (typeof value !== "object" || value === null) return ascii(JSON.stringify(value ?? null));
  const entries = Object.entries(value).filter(([, part]) => part !== undefined);
  return `{${entries
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, part]) => `${ascii(JSON.stringify(key))}:${canonical(part)}`)
    .join()}}`;
};
const ascii = (text: string): string =>
  text.replace(/[^ -~]/g, (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, "0")}`);

const bodyOf = ({ kind: name, body }: RuleEntry, kinds: readonly Kind[]): unknown => {
  const { tint: _, note: __, ...said } = body;
  return kindNamed(name, kinds)?.body.write(said) ?? null;
};

/**
 * A short name for what a solver has to solve: grids (with their ids, which houses are named by), givens, and the rules
 * of each kind in file order. Title, setters, wording, notes, colours, how grids are called and the order of kinds do
 * not count.
 */
export const fingerprint = ({ grids, canvas, givens, rules }: Draft, kinds: readonly Kind[] = allKinds): string => {
  const byKind: Record<string, unknown[]> = {};
  for (const rule of rules) byKind[rule.kind] = [...(byKind[rule.kind] ?? []), bodyOf(rule, kinds)];
  return fnv1a(
    canonical({
      grids: grids.map(({ called: _, ...grid }) => grid),
      givens: Object.fromEntries([...givens].map(([cell, digit]) => [canvas.names[cell]!, digit])),
      rules: byKind,
    }),
  );
};
