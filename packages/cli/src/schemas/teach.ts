import * as z from "zod";
import { cell } from "./parts.ts";

/** What `teach --json` prints; without a puzzle where no board was found. */
export const teachSchema = z.strictObject({
  technique: z.string().describe("What was to be taught, where it is a technique.").optional(),
  kind: z.string().describe("What was to be taught, where it is a kind of rule.").optional(),
  seed: z.int().min(0),
  puzzle: z.string().describe("The puzzle file.").optional(),
  say: z.string().describe("The line of its key step, in the placed style.").optional(),
  cells: z.array(cell).describe("The cells that the key step settles or narrows.").optional(),
});
