import * as z from "zod";
import { cell, digits } from "./parts.ts";

/** What `why --claim --json` prints. */
export const claimSchema = z.strictObject({
  verdict: z
    .enum(["sound", "missing", "unsound", "unknown"])
    .describe("Missing: sound but for a reason that is named. Unknown: too big to judge."),
  wrong: z.array(cell).describe("Cells settled wrongly on the board asked from; left aside."),
  step: z
    .optional(z.looseObject({ technique: z.literal("claimed"), say: z.string() }))
    .describe("The deduction with the reasons that it needs, proved; as in a running order."),
  missing: z.array(z.string()).describe("Houses and rules that were not named and are needed."),
  unshown: z.array(cell).describe("Cells of which more was said than the board shows."),
  spare: z.array(z.string()).describe("Houses and rules that were named and are not needed."),
  counterexample: z
    .optional(digits)
    .describe("Digits that obey all that was named and what the board shows, but not the conclusion."),
  say: z.string(),
});

export type ClaimForm = z.infer<typeof claimSchema>;
