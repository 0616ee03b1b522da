import { letterOnEdge } from "../../marks/edge.ts";
import { type PairBody, pairs } from "../bodies/pairs.ts";
import type { Kind } from "../contract.ts";
import { type Edge, edgeOf, holding } from "../edge.ts";

const isSum = (first: number, second: number): boolean => first + second === 5;

export const xvV: Kind<PairBody, Edge> = {
  name: "xv-v",
  body: pairs,
  edgeMark: "xv",
  resolve: ({ cells }, setting) =>
    edgeOf(cells, setting, isSum, { right: "a V between cells whose digits can add up to 5" }),
  scopes: ({ cells }) => [holding(cells, isSum)],
  terms: ({ id, cells }) => [{ term: "sum", owner: id, cells, equals: 5 }],
  marks: ({ at }) => [letterOnEdge("V", at)],
  words: ({ cells }) => ({
    rule: "Digits joined by a V add up to 5.",
    title: "V marks",
    noun: "V",
    plural: "Vs",
    at: cells,
    holds: "add up to 5",
  }),
  alsoSaid: ["xv", "sum to 5", "add up to 5"],
  relabels: "none",
};
