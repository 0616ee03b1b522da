import * as z from "zod";

/** What every command prints with `--json` on bad input or usage, exit code 2. Only faults in a file have a place in it. */
export const problemsSchema = z.strictObject({
  problems: z
    .array(
      z.strictObject({
        line: z.int().min(1).optional(),
        column: z.int().min(1).optional(),
        read: z.string(),
        right: z.string(),
        path: z.string().optional().describe("Keys and list indices (from 0): rules/2/cage/sum."),
      }),
    )
    .min(1),
});
