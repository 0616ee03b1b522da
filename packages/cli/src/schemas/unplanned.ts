import * as z from "zod";

/** What `plan --json` and `pack --json` print where there is nothing to plan, exit code 1, or where they were stopped, 3. */
export const unplannedSchema = z.strictObject({
  solved: z.literal(false).optional(),
  verdict: z.enum(["one", "several", "none"]).optional().describe("One: reasoning does not reach the end."),
  stopped: z.literal(true).optional(),
});
