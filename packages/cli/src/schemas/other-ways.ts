import * as z from "zod";
import { cell } from "./parts.ts";

const step = z.looseObject({
  n: z.int().min(1).describe("The place of the step in the running order."),
  technique: z.string(),
  level: z.int().min(1).max(5),
  say: z.string().describe("The line in the pointing style."),
  seconds: z.number().min(0),
});

const way = z.strictObject({
  n: z.int().min(1).describe("The place among the other ways, the best first."),
  step: step.describe("As in a running order, proved and small; what it concludes is what the order's own step does."),
  placed: z.string().describe("The same line in the placed style."),
  wish: z
    .looseObject({ wish: z.literal("another"), cell: cell.optional() })
    .describe(
      "What takes this way in place of the order's own, for a list of wishes; none can for a tie between cells.",
    )
    .optional(),
});

/** What `plan --other-ways --json` prints. */
export const otherWaysSchema = z.strictObject({
  beat: z.int().min(1).describe("Counted through the whole show, the rules first."),
  name: z.string(),
  say: z.string(),
  steps: z.array(
    z.strictObject({
      step: step.describe("The order's own."),
      said: z.string().describe("What it concludes, without its reason."),
      ways: z.array(way),
    }),
  ),
});

export type OtherWaysForm = z.infer<typeof otherWaysSchema>;
