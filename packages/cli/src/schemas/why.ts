import * as z from "zod";
import { cell } from "./parts.ts";

/** What `why --json` prints; its steps are as in a running order. */
export const whySchema = z.strictObject({
  answer: z.enum(["is", "cannot", "can", "unknown"]),
  wrong: z.array(cell).describe("Cells settled wrongly on the board asked from; left aside."),
  wrongMarks: z.array(cell).describe("Cells whose marks there leave the right digit out; left aside."),
  wrongSpots: z
    .array(z.strictObject({ digit: z.int().min(0).max(31), house: z.string(), cells: z.array(cell) }))
    .describe("Spot marks there that leave the right place out; left aside."),
  steps: z.array(
    z.looseObject({ n: z.int().min(1), technique: z.string(), level: z.int().min(1).max(5), say: z.string() }),
  ),
  say: z.string(),
});
