import { xvSign } from "../../marks/signs.ts";
import { pairTerms } from "../../terms/make.ts";
import { type WholeGridBody, wholeGrid } from "../bodies/whole-grid.ts";
import type { Kind } from "../contract.ts";
import { holding } from "../edge.ts";
import { meansNothing } from "../readings.ts";
import { type Everywhere, placed, withoutMark } from "../whole-grid.ts";

const needNoMark = (x: number, y: number): boolean => x + y !== 5 && x + y !== 10;

export const allXvShown: Kind<WholeGridBody, Everywhere> = {
  name: "all-xv-shown",
  body: wholeGrid,
  wholeGrid: true,
  missing: { mark: "xv", says: "every X and V is shown" },
  resolve: (body, setting) => withoutMark(body, setting, "xv"),
  scopes: ({ pairs }) => pairs.map((pair) => holding(pair, needNoMark)),
  terms: ({ id, pairs }) => pairTerms(id, pairs, needNoMark),
  marks: () => xvSign(),
  words: ({ where }) => ({
    rule: `${placed(where, "Every X and V is shown")}. Neighbours without either add up to neither 5 nor 10.`,
    title: "Every X and V is shown",
    noun: "missing X or V",
    plural: "missing Xs and Vs",
    at: [],
    holds: "add up to neither 5 nor 10",
  }),
  alsoSaid: [
    "all ... x",
    "all ... v",
    "every ... x",
    "every ... v",
    "no ... x",
    "without ... x",
    "all xv",
    "negative constraint",
  ],
  readings: [meansNothing("missing Xs and Vs mean nothing")],
  relabels: "none",
};
