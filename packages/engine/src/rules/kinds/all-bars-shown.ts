import { barSign } from "../../marks/signs.ts";
import { pairTerms } from "../../terms/make.ts";
import { type WholeGridBody, wholeGrid } from "../bodies/whole-grid.ts";
import type { Kind } from "../contract.ts";
import { holding } from "../edge.ts";
import { meansNothing } from "../readings.ts";
import { type Everywhere, placed, withoutMark } from "../whole-grid.ts";

const needNoBar = (x: number, y: number): boolean => Math.abs(x - y) !== 1;

export const allBarsShown: Kind<WholeGridBody, Everywhere> = {
  name: "all-bars-shown",
  body: wholeGrid,
  wholeGrid: true,
  missing: { mark: "bar", says: "all bars are shown" },
  resolve: (body, setting) => withoutMark(body, setting, "bar"),
  scopes: ({ pairs }) => pairs.map((pair) => holding(pair, needNoBar)),
  terms: ({ id, pairs }) => pairTerms(id, pairs, needNoBar),
  marks: () => barSign(),
  words: ({ where }) => ({
    rule: `${placed(where, "All bars are shown")}. Neighbours without a bar do not differ by 1.`,
    title: "All bars are shown",
    noun: "missing bar",
    plural: "missing bars",
    at: [],
    holds: "don't differ by 1",
  }),
  alsoSaid: ["all ... bar", "every ... bar", "no ... bar", "without ... bar", "negative constraint"],
  readings: [meansNothing("missing bars mean nothing")],
  relabels: "mirror",
};
