import * as z from "zod/mini";
import type { Because, Step } from "../../deduce/step.ts";
import { cellsOfRelation } from "../../prove/form.ts";

/** A step by what lasts when the order is made anew: its technique, one cell that it concludes about, what it leans on. */
export interface StepKey {
  readonly technique: string;
  readonly cell: string;
  /** Its clues, or the house that it speaks of. */
  readonly by: readonly string[];
}

/** A way to reach something: a technique, and what it leans on. */
export type WayKey = Pick<StepKey, "technique" | "by">;

export const corners = ["top-left", "top-right", "bottom-left", "bottom-right"] as const;
export type Corner = (typeof corners)[number];

/** What a presenter asks of a running order; a plain value, saved with the puzzle and replayed. Cells by their names. */
export type Wish =
  /** The beat that settles this cell comes as early as it can. */
  | { readonly wish: "first"; readonly cell: string }
  /** A beat of its own, with an invitation to pause: for the cell's digit, or where the clue or technique is first used. */
  | { readonly wish: "feature"; readonly cell: string }
  | { readonly wish: "feature"; readonly rule: string }
  | { readonly wish: "feature"; readonly technique: string }
  | { readonly wish: "without-technique"; readonly technique: string }
  | { readonly wish: "without-step"; readonly step: StepKey }
  /** No step above this level, 1 to 5. */
  | { readonly wish: "level"; readonly most: number }
  /** Nothing that lies in this grid alone while other digits can be found. */
  | { readonly wish: "later"; readonly grid: string }
  | { readonly wish: "corner"; readonly grid: string; readonly corner: Corner }
  /** The cell's digit by another way than these. */
  | { readonly wish: "another"; readonly cell: string; readonly than: readonly StepKey[] }
  /** The cell's digit by this way alone. */
  | { readonly wish: "another"; readonly cell: string; readonly way: WayKey }
  /** These digits, by cell, are taken out by this way alone. */
  | { readonly wish: "another"; readonly gone: Readonly<Record<string, readonly number[]>>; readonly way: WayKey }
  /** The presenter's own words for the beat that settles this cell. */
  | { readonly wish: "words"; readonly cell: string; readonly say: string };

/** A wish for one way alone to something. */
export type WayWish = Extract<Wish, { readonly way: WayKey }>;
export const isWayWish = (wish: Wish): wish is WayWish => "way" in wish;

/** A wish that the order does not fulfil, or not wholly, and why, in a sentence. */
export interface Unmet {
  readonly wish: Wish;
  readonly why: string;
}

/** What a step leans on first: its clues, else the house that it speaks of. */
export const leansOn = ({ rules, houses }: Pick<Because, "rules" | "houses">): readonly string[] =>
  rules.length > 0 ? rules : houses.slice(0, 1);

/** Whether a step is by the clue or the technique that is to be featured. */
export const isFeaturedBy = (
  wish: Wish,
  { technique, because }: { readonly technique: string; readonly because: { readonly rules: readonly string[] } },
): boolean =>
  wish.wish === "feature" &&
  (("rule" in wish && because.rules.includes(wish.rule)) || ("technique" in wish && technique === wish.technique));

/** By what a published step can be wished away. */
export const keyOf = ({ technique, places, removes, relates, because }: Step): StepKey => ({
  technique,
  cell: [...Object.keys(places), ...Object.keys(removes), ...relates.flatMap(cellsOfRelation)][0]!,
  by: leansOn(because),
});

const cell = z.string().check(z.regex(/^r[1-9]\d*c[1-9]\d*$/));
const stepKey = z.readonly(z.strictObject({ technique: z.string(), cell, by: z.readonly(z.array(z.string())) }));

const wayKey = z.readonly(z.strictObject({ technique: z.string(), by: z.readonly(z.array(z.string())) }));
const goneByCell = z.readonly(z.record(cell, z.readonly(z.array(z.int().check(z.minimum(0), z.maximum(31))))));

/** A wish as it is saved; reads back what `Wish` says and nothing else. */
export const wishSchema = z.union([
  z.strictObject({ wish: z.literal("first"), cell }),
  z.strictObject({ wish: z.literal("feature"), cell }),
  z.strictObject({ wish: z.literal("feature"), rule: z.string() }),
  z.strictObject({ wish: z.literal("feature"), technique: z.string() }),
  z.strictObject({ wish: z.literal("without-technique"), technique: z.string() }),
  z.strictObject({ wish: z.literal("without-step"), step: stepKey }),
  z.strictObject({ wish: z.literal("level"), most: z.int().check(z.minimum(1), z.maximum(5)) }),
  z.strictObject({ wish: z.literal("later"), grid: z.string() }),
  z.strictObject({ wish: z.literal("corner"), grid: z.string(), corner: z.enum(corners) }),
  z.strictObject({ wish: z.literal("another"), cell, than: z.readonly(z.array(stepKey)) }),
  z.strictObject({ wish: z.literal("another"), cell, way: wayKey }),
  z.strictObject({ wish: z.literal("another"), gone: goneByCell, way: wayKey }),
  z.strictObject({ wish: z.literal("words"), cell, say: z.string().check(z.minLength(1)) }),
]) satisfies z.ZodMiniType<Wish>;
