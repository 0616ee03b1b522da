import * as z from "zod";

const count = z.int().min(0);
const level = z.int().min(1).max(5);

/** A line of what `assess` finds: one puzzle file. */
export const assessSchema = z.strictObject({
  file: z.string().describe("Its path below the folder."),
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  verdict: z.enum(["one", "several", "none", "faulty"]),
  problems: z.optional(
    z.array(z.strictObject({ line: count, column: count, read: z.string(), right: z.string(), path: z.string() })),
  ),
  title: z.optional(z.string()),
  grids: z.optional(z.array(z.int().min(1)).describe("The size of each.")),
  givens: z.optional(count),
  kinds: z.optional(z.array(z.string())),
  leftOut: z.optional(z.array(z.string()).describe("Rules that the verdict leaves out.")),
  level: z.optional(level).describe("The lowest that gets through; absent where none does."),
  minutes: z.optional(z.number()).describe("Of the running order, the rules included."),
  settled: z.optional(z.array(count)).describe("By level from 1: digits that such a viewer finds alone."),
  open: z.optional(count).describe("Cells that are not given."),
  effort: z.optional(z.number()),
  dependency: z.optional(z.number()),
  refutation: z.optional(z.nullable(z.number())).describe("Null: easy steps and single trials do not get through."),
  canonical: z.optional(z.string()).describe("The same for puzzles that turning, mirroring or renaming makes equal."),
  sameAs: z.optional(z.array(z.string())).describe("Other files of the folder with that name."),
});

export type AssessForm = z.infer<typeof assessSchema>;
