import * as z from "zod/mini";

/** Seconds of a day: nobody's take is longer. */
const longest = 86_400;

const time = (what: string) => {
  const right = `${what}, in seconds from the start of the take: a number from 0 to ${longest}`;
  return z.number(right).check(z.minimum(0, right), z.maximum(longest, right));
};
const cellName = "a cell, such as r4c5";
const cell = z.string(cellName).check(z.regex(/^r[1-9]\d*c[1-9]\d*$/, cellName));
const digitName = "a digit, from 0 to 31";
const digit = z.int(digitName).check(z.minimum(0, digitName), z.maximum(31, digitName));

const at = time("when it was done");
const marksName = "a list of the digits that are marked from then on; [] where none are";

/** What a presenter does on the board, one form each. */
export const entryForms = {
  settle: z.strictObject({ at, cell, settle: digit.check(z.describe("The cell's digit from then on.")) }),
  marks: z.strictObject({ at, cell, marks: z.readonly(z.array(digit, marksName).check(z.describe(marksName))) }),
  clear: z.strictObject({ at, cell, clear: z.literal(true, "clear: true").check(z.describe("Digit and marks go.")) }),
  spot: z.strictObject({
    at,
    spot: digit.check(z.describe("A spot mark: where this digit of a house can go.")),
    house: z.string("a house, such as row/main/4"),
    cells: z.readonly(z.array(cell, "a list of cells; [] takes the mark away")),
  }),
};

export type TakeEntry = {
  readonly [Name in keyof typeof entryForms]: Readonly<z.infer<(typeof entryForms)[Name]>>;
}[keyof typeof entryForms];

const fields = {
  take: z.literal(1, "take: 1"),
  puzzle: z
    .string("the puzzle's fingerprint, as a pack's manifest has it")
    .check(z.describe("The fingerprint of the puzzle as it was solved.")),
  slate: time("when the slate flashes").check(z.describe("When the slate flashes.")),
  ends: time("when the take ends").check(z.describe("When the take ends.")),
};

/** A take but for its entries. */
export const takeHead = z.strictObject(fields);

/** The form of a take's file. All times are in seconds from the start of the take. */
export const takeForm = z.strictObject({
  ...fields,
  entries: z
    .readonly(z.array(z.union(Object.values(entryForms) as [(typeof entryForms)["settle"]])))
    .check(z.describe("In the order in which they were made.")),
});

/** The JSON Schema (2020-12) of a take's file. */
export const takeSchema = (): object => z.toJSONSchema(takeForm, { target: "draft-2020-12" });

/** One recorded solve: every entry with its time, in seconds from the start of the take. */
export interface Take {
  /** The puzzle's fingerprint. */
  readonly puzzle: string;
  /** When the slate flashes, by which the take's clock is matched to a recorder's. */
  readonly slate: number;
  readonly ends: number;
  /** In the order of time. */
  readonly entries: readonly TakeEntry[];
}
