import * as z from "zod/mini";
import { sourceOf, telling } from "../puzzle/problems.ts";
import type { Problem } from "../puzzle/puzzle.ts";
import { parse } from "../puzzle/source.ts";
import { shownTree } from "../puzzle/texts.ts";
import { plainOf, type Tell, type Tree, treeAt } from "../puzzle/tree.ts";
import { fitted } from "../take/fitted.ts";
import { cutOut } from "./edit.ts";
import { readEdl } from "./edl.ts";
import { readOtio } from "./otio.ts";
import type { Cutting } from "./pieces-of.ts";

const longest = 86_400;
const timeName = `a time: seconds from 0 to ${longest}, or "m:ss" or "h:mm:ss"`;
const clockShape = /^(?:(\d{1,2}):)?(\d{1,2}):([0-5]\d(?:\.\d+)?)$/;

const secondsOf = (value: number | string): number => {
  if (typeof value === "number") return value;
  const [, hours, minutes, seconds] = clockShape.exec(value)!;
  return Number(hours ?? 0) * 3600 + Number(minutes) * 60 + Number(seconds);
};
const time = z.union(
  [z.number().check(z.minimum(0), z.maximum(longest)), z.string().check(z.regex(clockShape))],
  timeName,
);

/** The form of an edit's own file. Times are in seconds, or as clocks have them. */
const editForm = z.strictObject({
  edit: z.literal(1, "an edit, which starts with edit: 1"),
  offset: z.optional(time).check(z.describe("When in the recording the slate flashes; at its start where left out.")),
  opening: z.optional(time).check(z.describe("How long the video goes on before the recording begins.")),
  cuts: z
    .optional(
      z.readonly(
        z.array(z.strictObject({ from: time, to: time }, "a cut: { from: 61.5, to: 1:15 }"), "a list of cuts"),
      ),
    )
    .check(z.describe("What the video leaves out, in the recording's time.")),
});

/** The JSON Schema (2020-12) of an edit's own file. */
export const editSchema = (): object => z.toJSONSchema(editForm, { target: "draft-2020-12" });

type Form = z.infer<typeof editForm>;

const ofForm = ({ offset, opening, cuts = [] }: Form): Cutting => ({
  edit: cutOut(
    cuts.map(({ from, to }) => ({ from: secondsOf(from), to: secondsOf(to) })),
    secondsOf(opening ?? 0),
  ),
  ...(offset === undefined ? {} : { slate: secondsOf(offset) }),
});

const tellBackward = (tree: Tree, { cuts = [] }: Form, tell: Tell): void =>
  cuts.forEach(({ from, to }, k) => {
    const spot = treeAt(tree, ["cuts", k]);
    if (secondsOf(to) <= secondsOf(from)) tell(spot, shownTree(spot), "a cut that ends after it begins");
  });

const start = "an edit, which starts with edit: 1";

const readOwn = (source: string, tell: Tell): Cutting => {
  const { tree, sound } = parse(source, start, tell);
  const form = tree && sound ? fitted<Form>(editForm as never, tree, tell, plainOf(tree)) : undefined;
  if (form) tellBackward(tree!, form, tell);
  return form ? ofForm(form) : { edit: [] };
};

/** OpenTimelineIO says what it is; a decision list begins with its title or an event. */
const readerOf = (source: string): typeof readOwn => {
  if (source.includes('"OTIO_SCHEMA"')) return readOtio;
  return /^\s*(TITLE:|FCM:|\d+\s+\S+\s+\S+\s+[CDWK])/im.test(source) ? readEdl : readOwn;
};

/** Bytes of UTF-8 that an edit's file may have. */
export const mostEditBytes = 16 * 1024 * 1024;

/**
 * Reads an edit: our own form (YAML or JSON), OpenTimelineIO or a CMX 3600 decision list, whichever it is. Never throws on
 * a text: all that is wrong is told together.
 */
export const readEdit = (text: string): { readonly cutting?: Cutting; readonly problems: readonly Problem[] } => {
  const source = sourceOf(text);
  const { tell, problems } = telling();
  const cutting = readerOf(source)(source, tell);
  const found = problems(source);
  return { ...(found.length === 0 ? { cutting } : {}), problems: found };
};
