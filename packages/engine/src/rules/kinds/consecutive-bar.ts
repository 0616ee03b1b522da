import { barOnEdge } from "../../marks/edge.ts";
import { pairTerm } from "../../terms/make.ts";
import { type PairBody, pairs } from "../bodies/pairs.ts";
import type { Kind } from "../contract.ts";
import { type Edge, edgeOf, holding } from "../edge.ts";

const areConsecutive = (first: number, second: number): boolean => Math.abs(first - second) === 1;

export const consecutiveBar: Kind<PairBody, Edge> = {
  name: "consecutive-bar",
  body: pairs,
  edgeMark: "bar",
  resolve: ({ cells }, setting) =>
    edgeOf(cells, setting, areConsecutive, { right: "a bar between cells whose digits can differ by 1" }),
  scopes: ({ cells }) => [holding(cells, areConsecutive)],
  terms: ({ id, cells }) => [pairTerm(id, cells, areConsecutive)],
  marks: ({ ends, at }) => [barOnEdge(ends, at)],
  words: ({ cells }) => ({
    rule: "Digits joined by a bar differ by 1.",
    title: "Bars",
    noun: "bar",
    plural: "bars",
    at: cells,
    holds: "differ by 1",
  }),
  alsoSaid: ["consecutive"],
  relabels: "mirror",
};
