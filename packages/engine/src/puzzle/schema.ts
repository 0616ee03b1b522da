import * as z from "zod/mini";
import type { Kind } from "../rules/contract.ts";
import { kinds as allKinds } from "../rules/registry.ts";

const consent = z.enum(["own", "granted", "asked", "refused", "unknown"]);
const uses = z.strictObject({
  show: z.optional(consent),
  page: z.optional(consent),
  print: z.optional(consent),
  change: z.optional(consent),
});
const setter = z.strictObject({
  name: z.string(),
  link: z.optional(z.nullable(z.string())),
  permission: z.optional(z.union([consent, uses])),
});

const cell = /^r[1-9]\d{0,3}c[1-9]\d{0,3}$/;
const digit = z.int().check(z.minimum(0), z.maximum(31));

const grid = z.strictObject({
  id: z.union([z.string().check(z.regex(/^[a-z0-9-]{1,40}$/)), z.int()]),
  called: z.optional(z.string()),
  size: z.int().check(z.minimum(1), z.maximum(25)),
  at: z.optional(z.string().check(z.regex(cell))),
  digits: z.optional(z.union([z.string(), digit, z.array(z.union([digit, z.string()]))])),
  regions: z.optional(z.nullable(z.string())),
});

const givens = z.catchall(
  z.object({ cells: z.optional(z.nullable(z.record(z.string().check(z.regex(cell)), digit))) }),
  z.nullable(z.union([z.string(), z.number()])),
);

const ruleOf = ({ name, body }: Kind) => {
  const keyed = z.strictObject({ [name]: body.schema }).check(z.describe(`${name}: ${body.form}`));
  return body.mayBeEmpty ? z.union([z.literal(name), keyed]) : keyed;
};

/** The JSON Schema (2020-12) of the puzzle file with these kinds of rules. It takes every sound file; what cells, sums and regions must fulfil together is the reader's to judge. */
export const schemaOf = (kinds: readonly Kind[] = allKinds): object => {
  const rules = z.union(kinds.map(ruleOf) as [ReturnType<typeof ruleOf>, ...ReturnType<typeof ruleOf>[]]);
  const file = z.strictObject({
    puzzle: z.literal(1),
    title: z.optional(z.nullable(z.union([z.string(), z.number()]))),
    setter: z.optional(z.nullable(z.union([setter, z.array(setter)]))),
    wording: z.optional(z.nullable(z.string())),
    notes: z.optional(z.nullable(z.string())),
    grids: z.array(grid).check(z.minLength(1)),
    givens: z.optional(z.nullable(givens)),
    rules: z.optional(z.nullable(z.array(rules))),
  });
  return z.toJSONSchema(file, { target: "draft-2020-12" });
};
