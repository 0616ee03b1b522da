import { chevronOnEdge } from "../../marks/edge.ts";
import { type PairBody, pairs } from "../bodies/pairs.ts";
import type { Kind } from "../contract.ts";
import { type Edge, edgeOf, holding } from "../edge.ts";

const isGreater = (first: number, second: number): boolean => first > second;

export const greaterThan: Kind<PairBody, Edge> = {
  name: "greater-than",
  body: pairs,
  resolve: ({ cells }, setting) =>
    edgeOf(cells, setting, isGreater, { right: "the greater cell first; this first cell can't be greater" }),
  scopes: ({ cells }) => [holding(cells, isGreater)],
  terms: ({ id, cells: [greater, less] }) => [{ term: "order", owner: id, cells: [less!, greater!], strict: true }],
  marks: ({ ends, at }) => chevronOnEdge(ends, at),
  words: ({ cells }) => ({
    rule: "Each sign opens to the greater of its two digits and points at the smaller one.",
    title: "Greater-than signs",
    noun: "greater-than sign",
    plural: "greater-than signs",
    at: cells,
    holds: "get smaller toward the point",
  }),
  alsoSaid: ["greater than", "larger than", "less than", "smaller than", "inequalit"],
  relabels: "none",
};
