import * as z from "zod";

/** What `check --lines` prints of each line of a file of plain givens. */
export const checkLineSchema = z.strictObject({
  line: z.int().positive().describe("Its number in the file, from 1."),
  verdict: z.enum(["one", "several", "none"]),
  solutions: z
    .array(z.string().regex(/^[1-9]+$/))
    .max(2)
    .describe("Up to two, digit by digit in reading order."),
});

export type LineForm = z.infer<typeof checkLineSchema>;
