import { notNextSign } from "../../marks/signs.ts";
import { pairTerms } from "../../terms/make.ts";
import { type WholeGridBody, wholeGrid } from "../bodies/whole-grid.ts";
import type { Kind } from "../contract.ts";
import { holding } from "../edge.ts";
import { type Everywhere, everywhere, placed, sides } from "../whole-grid.ts";

const areApart = (x: number, y: number): boolean => Math.abs(x - y) !== 1;

export const nonConsecutive: Kind<WholeGridBody, Everywhere> = {
  name: "non-consecutive",
  body: wholeGrid,
  wholeGrid: true,
  resolve: (body, setting) => everywhere(body, setting, sides),
  scopes: ({ pairs }) => pairs.map((pair) => holding(pair, areApart)),
  terms: ({ id, pairs }) => pairTerms(id, pairs, areApart),
  marks: () => notNextSign(),
  words: ({ where }) => ({
    rule: `${placed(where, "Cells that share a side never hold consecutive digits")}.`,
    title: "No consecutive neighbours",
    noun: "pair of neighbours",
    plural: "pairs of neighbours",
    at: [],
    holds: "are neighbours, so they don't differ by 1",
  }),
  alsoSaid: ["consecutive"],
  relabels: "mirror",
};
