import * as z from "zod";

/** What `answer --json` prints. */
export const answerSchema = z.strictObject({
  answer: z.enum(["is", "cannot", "can", "unknown"]),
  reply: z.string().describe("The text to paste, paragraphs with a blank line between."),
  moment: z
    .strictObject({ seconds: z.int().min(0), address: z.string().optional() })
    .describe("When in the video the cell is settled, and where to watch it from there.")
    .optional(),
});
