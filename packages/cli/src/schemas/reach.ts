import * as z from "zod";
import { cell } from "./parts.ts";

const level = z.int().min(1).max(5);
const count = z.int().min(0);

/** What `reach --json` prints. */
export const reachSchema = z.strictObject({
  open: count.describe("Cells that are not given."),
  viewers: z
    .array(
      z.strictObject({
        level,
        called: z.string(),
        settled: count.describe("Digits found alone, of those not given."),
        through: z.boolean(),
      }),
    )
    .describe("By level: how far they come alone."),
  way: z
    .array(
      z.strictObject({
        cell,
        digit: z.int().min(0).max(31),
        level,
        effort: z.number().describe("Thoughts up to this digit."),
        open: count.describe("Cells that an easy step settles just before."),
        pause: z.number().describe("How long a pause is likely: in seconds where fitted to testers, else of no unit."),
      }),
    )
    .describe("Digit by digit, at the lowest level that gets through."),
  pauses: z.array(count).describe("Places in `way` from 0, the likeliest pause first."),
  effort: z.number(),
  measures: z
    .strictObject({
      first: count,
      dependency: z.number(),
      dependencyError: z.number(),
      refutation: z.number(),
      refutationError: z.number(),
      whole: z.boolean().describe("False: refutation is at least this."),
      runs: count,
      seed: z.int(),
    })
    .describe(
      "Of dependency and refutation, as published for classic puzzles; errors are standard errors of the mean.",
    ),
  testers: z.optional(
    z.strictObject({
      testers: count,
      pauses: count.describe("The first of each tester is left out."),
      correlation: z.optional(
        z
          .strictObject({ mean: z.number(), error: z.optional(z.number()) })
          .describe("Spearman's, of the unfitted guess, averaged over testers."),
      ),
      fit: z.optional(
        z.strictObject({
          weights: z.strictObject({ always: z.number(), thought: z.number(), looking: z.number() }),
          error: z.number().describe("Mean distance in seconds from a tester who was left out."),
          errorOfMiddle: z.number().describe("The same with no guess but the middle pause."),
          better: z.boolean(),
        }),
      ),
    }),
  ),
  say: z.string(),
});

export type ReachForm = z.infer<typeof reachSchema>;
