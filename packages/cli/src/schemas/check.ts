import * as z from "zod";
import { cell, digits, worth } from "./parts.ts";

/** What `check --json` prints. A finding that was stopped has what was known by then, and `stopped`. */
export const checkSchema = z.strictObject({
  verdict: z.enum(["one", "several", "none"]).optional().describe("Left out where it was stopped before."),
  solutions: z.array(digits).max(2).optional().describe("Up to two."),
  differ: z.array(cell).optional().describe("The cells in which the two shown differ."),
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
  ms: z.number().nonnegative().describe("How long the verdict took, in milliseconds."),
  stopped: z.literal(true).optional(),
});

export type CheckForm = z.infer<typeof checkSchema>;
