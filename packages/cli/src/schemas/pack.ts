import * as z from "zod";

const fact = z.enum(["credit", "link", "date", "consent", "page", "print", "change"]);

/** What `pack --json` prints. */
export const packSchema = z.strictObject({
  folder: z.string(),
  files: z.array(z.string()),
  kept: z.array(z.string()).describe("Changed by hand, so not written over."),
});

/** What `correct --json` prints. */
export const correctSchema = packSchema.extend({
  corrections: z.number().describe("In how many things the right puzzle differs from the one that was published."),
});

/** What `booklet --json` prints. */
export const bookletSchema = z.strictObject({
  file: z.string(),
  puzzles: z.number().describe("How many are in it."),
  held: z.array(z.string()).describe("Why it may not be handed out yet."),
});

/** The manifest.json of a pack. */
export const manifestSchema = z.strictObject({
  pack: z.literal(1),
  title: z.string(),
  puzzle: z.string().describe("The puzzle's fingerprint."),
  date: z.string().optional().describe("The day of the show, where it is known."),
  held: z
    .array(z.strictObject({ because: z.string(), files: z.array(z.string()) }))
    .describe("What may not go out before a setter has agreed, and why."),
  changes: z.string().describe("What holds for a puzzle that was changed: it may not go out as the setter's own."),
  files: z.array(
    z.strictObject({
      name: z.string(),
      purpose: z.string(),
      lacks: z.array(fact).describe("What it should not go out without and is not known yet."),
      sha256: z.string().regex(/^[0-9a-f]{64}$/),
    }),
  ),
});
