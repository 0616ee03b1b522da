import * as z from "zod/mini";
import type { Because, Relation, SpotFact, Step } from "../deduce/step.ts";
import type { Plan, PlanAct, PlanBeat, PlanFocus, PlanPause, PlanWrites, RuleLine, RulesAct } from "./plan.ts";
import { wishSchema } from "./wishes/wish.ts";

const cell = z.string().check(z.regex(/^r[1-9]\d*c[1-9]\d*$/));
const cells = z.readonly(z.array(cell));
const digit = z.int().check(z.minimum(0), z.maximum(31));
const digits = z.readonly(z.array(digit));
const seconds = z.number().check(z.minimum(0));
const level = z.int().check(z.minimum(1), z.maximum(5));
const counted = z.int().check(z.minimum(1));
const texts = z.readonly(z.array(z.string()));
const byCell = <T extends z.ZodMiniType>(value: T) => z.readonly(z.record(cell, value));
const numbers = z.readonly(z.array(z.union([counted, z.string().check(z.regex(/^\d+(\.\d+)+$/))])));
const two = z.readonly(z.tuple([cell, cell]));

const spot = z.readonly(z.strictObject({ digit, cells, house: z.string() })) satisfies z.ZodMiniType<SpotFact>;
const relation = z.union([
  z.readonly(z.strictObject({ same: two })),
  z.readonly(z.strictObject({ less: two })),
  z.readonly(z.strictObject({ sum: cells, is: z.int() })),
  z.readonly(z.strictObject({ parity: two, is: z.enum(["same", "different"]) })),
]) satisfies z.ZodMiniType<Relation>;

const because = z.strictObject({
  facts: byCell(digits).check(z.describe("Cell to the digits that remain in it.")),
  spots: z.readonly(z.array(spot)),
  relations: z.readonly(z.array(relation)),
  houses: texts,
  rules: texts,
  recalls: numbers.check(z.describe("Numbers of earlier steps whose reason the line says again.")),
  limits: cells.check(z.describe("Cells whose grids allow fewer digits than the claim would need. No premise.")),
  counts: z.exactOptional(z.readonly(z.array(z.readonly(z.strictObject({ plus: texts, minus: texts }))))),
}) satisfies z.ZodMiniType<Because>;

const step: z.ZodMiniType<Step> = z.strictObject({
  n: z.union([counted, z.string()]),
  technique: z.string(),
  level,
  places: byCell(digit),
  removes: byCell(digits),
  spots: z.readonly(z.array(spot)),
  relates: z.readonly(z.array(relation)),
  because,
  assume: z.exactOptional(byCell(digit).check(z.describe("A what-if: this cell is tried as this digit."))),
  get steps() {
    return z.exactOptional(
      z.readonly(z.array(step)).check(z.describe("The steps of a what-if, the contradiction last.")),
    );
  },
  contradiction: z.exactOptional(z.literal(true)),
  say: z.string().check(z.describe("The line in the pointing style.")),
  seconds,
});

const part = z.readonly(
  z.strictObject({
    text: z.string(),
    role: z.enum(["because", "so", "plain"]),
    of: z.exactOptional(
      z.union([
        z.readonly(z.strictObject({ cells })),
        z.readonly(z.strictObject({ house: z.string() })),
        z.readonly(z.strictObject({ rule: z.string() })),
        z.readonly(z.strictObject({ grid: z.string() })),
      ]),
    ),
  }),
);

const writes = z.strictObject({
  cells: byCell(digits),
  spots: z.readonly(z.array(spot)),
}) satisfies z.ZodMiniType<PlanWrites>;

const pause = z.strictObject({ say: z.string(), seconds }) satisfies z.ZodMiniType<PlanPause>;

const beat = z.strictObject({
  n: counted.check(z.describe("Counted through the whole show, the rules first.")),
  name: z.string(),
  seconds: seconds.check(z.describe("With its pause, its marks and the breath.")),
  pause: z.exactOptional(pause.check(z.describe("An invitation to stop and look, said before it."))),
  featured: z.exactOptional(z.literal(true).check(z.describe("The presenter wants it featured."))),
  say: z.string(),
  parts: z.readonly(z.array(part)),
  placed: z.string().check(z.describe("The same line in the placed style.")),
  steps: numbers,
  standsOn: z.readonly(z.array(counted)).check(z.describe("Numbers of the beats that it leans on.")),
  opens: z.readonly(z.array(counted)).check(z.describe("Numbers of the beats that lean on it.")),
  writes: writes.check(z.describe("The marks that it writes once it is over.")),
}) satisfies z.ZodMiniType<PlanBeat>;

const act = z.strictObject({
  title: z.string(),
  seconds: seconds.check(z.describe("With its opening and its close.")),
  open: z.string(),
  close: z.string(),
  beats: z.readonly(z.array(beat)),
}) satisfies z.ZodMiniType<PlanAct>;

const focus = z.strictObject({
  rules: texts,
  houses: texts,
  cells: cells.check(z.describe("Of the one clue that serves as example, or of what the grids share.")),
}) satisfies z.ZodMiniType<PlanFocus>;

const ruleLine = z.strictObject({
  n: counted,
  rule: z.string().check(z.describe("A rule's id, a kind's name, or grids for rows, columns and regions.")),
  title: z.string(),
  say: z.string(),
  seconds,
  focus: focus.check(z.describe("What is drawn while it is said.")),
}) satisfies z.ZodMiniType<RuleLine>;

const rulesAct = z.strictObject({
  title: z.string(),
  seconds,
  lines: z.readonly(z.array(ruleLine)),
}) satisfies z.ZodMiniType<RulesAct>;

const plan = z.strictObject({
  solved: z.boolean(),
  level: level.check(z.describe("The highest level of a step.")),
  seconds,
  unshown: z.int().check(z.minimum(0), z.describe("Facts, recalls and marks that nobody showed the audience.")),
  rules: rulesAct,
  acts: z.readonly(z.array(act)),
  steps: z.readonly(z.array(step)).check(z.describe("In running order.")),
  meets: texts.check(z.describe("Rule kinds and techniques that the audience meets in this show for the first time.")),
  unmet: z
    .readonly(z.array(z.readonly(z.strictObject({ wish: wishSchema, why: z.string() }))))
    .check(z.describe("Wishes that the order does not fulfil, each with the reason.")),
  leftOut: texts.check(z.describe("Rules that the plan leaves out, as nobody has told their meaning.")),
}) satisfies z.ZodMiniType<Plan>;

/** The JSON Schema (2020-12) of a running order, `Plan`. */
export const planSchema = (): object => z.toJSONSchema(plan, { target: "draft-2020-12" });
