import { dotsSign } from "../../marks/signs.ts";
import { pairTerms } from "../../terms/make.ts";
import { type WholeGridBody, wholeGrid } from "../bodies/whole-grid.ts";
import type { Kind } from "../contract.ts";
import { holding } from "../edge.ts";
import { meansNothing } from "../readings.ts";
import { type Everywhere, placed, withoutMark } from "../whole-grid.ts";

const needNoDot = (x: number, y: number): boolean =>
  Math.abs(x - y) !== 1 && !(x * y > 0 && (x === 2 * y || y === 2 * x));

export const allDotsShown: Kind<WholeGridBody, Everywhere> = {
  name: "all-dots-shown",
  body: wholeGrid,
  wholeGrid: true,
  missing: { mark: "dot", says: "all dots are shown" },
  resolve: (body, setting) => withoutMark(body, setting, "dot"),
  scopes: ({ pairs }) => pairs.map((pair) => holding(pair, needNoDot)),
  terms: ({ id, pairs }) => pairTerms(id, pairs, needNoDot),
  marks: () => dotsSign(),
  words: ({ where }) => ({
    rule: `${placed(where, "All dots are shown")}. Neighbours without a dot are neither consecutive nor one twice the other.`,
    title: "All dots are shown",
    noun: "missing dot",
    plural: "missing dots",
    at: [],
    holds: "are neither consecutive nor in the ratio 1 to 2",
  }),
  alsoSaid: ["all ... dot", "every ... dot", "no ... dot", "without ... dot", "negative constraint"],
  readings: [meansNothing("missing dots mean nothing")],
  relabels: "none",
};
