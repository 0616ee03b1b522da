import * as z from "zod";
import { cell, digits, worth } from "./parts.ts";

const verdict = z.enum(["one", "several", "none"]);

/** A given (`{ "r1c1": 3 }`) or a rule (`"all-dots-shown"`, `{ "palindrome": "r1c1 r1c2" }`) as the puzzle file has it. */
const inFile = z.union([z.string(), z.record(z.string(), z.unknown())]);

/** What `check --json` prints. A finding that was stopped has what was known by then, and `stopped`. */
export const checkSchema = z.strictObject({
  verdict: verdict.optional().describe("Left out where it was stopped before."),
  solutions: z.array(digits).max(2).optional().describe("Up to two."),
  differ: z.array(cell).optional().describe("The cells in which the two shown differ."),
  count: z
    .strictObject({ solutions: z.int().positive(), exact: z.boolean().describe("There are no others.") })
    .optional()
    .describe("Where there are several solutions; they are counted up to a bound."),
  open: z.array(cell).optional().describe("Where there are several: the cells that are not the same in all of them."),
  conflict: z
    .strictObject({ houses: z.array(z.string()), rules: z.array(z.string()), givens: z.array(cell) })
    .optional()
    .describe("What can't all hold, where there is no solution."),
  rules: z
    .array(z.strictObject({ id: z.string(), worth }))
    .optional()
    .describe("Where there is one solution."),
  givens: z.array(z.strictObject({ cell, worth })).optional().describe("Where there is one solution."),
  leftOut: z.array(z.string()).describe("Rules that the file only describes."),
  assumptions: z
    .array(
      z.strictObject({
        reading: z.string().describe("The other reading, as a clause."),
        rule: z.string().describe("The kind of rule that would be read so, or be there."),
        outcome: z
          .enum(["needed", "no difference", "must be said"])
          .describe(
            "What our reading is to the solution: with the other there are several, the same one, or another or none.",
          ),
        verdict: verdict.describe("With the other reading."),
      }),
    )
    .optional()
    .describe("Where there is one solution: how else its rules could be read."),
  mends: z
    .array(
      z.strictObject({
        change: z.enum(["add", "remove"]),
        what: z
          .union([inFile, z.array(inFile).min(2)])
          .describe("A given or a rule in file form, or several together."),
        verdict: verdict.describe("Of the puzzle with this change."),
      }),
    )
    .optional()
    .describe("Where there is not exactly one solution: small changes, those that change least first."),
  wording: z
    .strictObject({
      unsaid: z
        .array(z.strictObject({ rule: z.string(), ids: z.array(z.string()) }))
        .describe("Kinds of rules of the file that are not found in the setter's wording."),
      onlySaid: z.array(z.string()).describe("Kinds of rules that seem to be found there and are not in the file."),
    })
    .optional()
    .describe("Where the file has the setter's wording: a plain search for words, no understanding."),
  ms: z.number().nonnegative().describe("How long the verdict took, in milliseconds."),
  stopped: z.literal(true).optional(),
});

export type CheckForm = z.infer<typeof checkSchema>;
