import * as z from "zod";
import { answerSchema } from "./answer.ts";
import { assessSchema } from "./assess.ts";
import { checkSchema } from "./check.ts";
import { checkLineSchema } from "./check-line.ts";
import { claimSchema } from "./claim.ts";
import { otherWaysSchema } from "./other-ways.ts";
import { bookletSchema, correctSchema, manifestSchema, packSchema } from "./pack.ts";
import { problemsSchema } from "./problems.ts";
import { reachSchema } from "./reach.ts";
import { teachSchema } from "./teach.ts";
import { unplannedSchema } from "./unplanned.ts";
import { whySchema } from "./why.ts";

/** The form of everything that a command prints for machines, by name; that of a plan is the engine's. */
export const schemas = {
  check: checkSchema,
  "check-line": checkLineSchema,
  why: whySchema,
  claim: claimSchema,
  answer: answerSchema,
  reach: reachSchema,
  assess: assessSchema,
  pack: packSchema,
  correct: correctSchema,
  booklet: bookletSchema,
  manifest: manifestSchema,
  teach: teachSchema,
  "other-ways": otherWaysSchema,
  unplanned: unplannedSchema,
  problems: problemsSchema,
};

/** The same as JSON Schema. */
export const publishedSchemas = (): ReadonlyMap<string, object> =>
  new Map(Object.entries(schemas).map(([name, schema]) => [name, z.toJSONSchema(schema, { target: "draft-2020-12" })]));
