import { type AssessForm, assessSchema } from "../../schemas/assess.ts";

/** A form as it was written and not as the schema orders it, for the same bytes; undefined where it is none. */
export const formIn = (line: string): AssessForm | undefined => {
  try {
    const form: unknown = JSON.parse(line);
    return assessSchema.safeParse(form).success ? (form as AssessForm) : undefined;
  } catch {
    return undefined;
  }
};
