import { letterOnEdge } from "../../marks/edge.ts";
import { type PairBody, pairs } from "../bodies/pairs.ts";
import type { Kind } from "../contract.ts";
import { type Edge, edgeOf, holding } from "../edge.ts";

const isSum = (first: number, second: number): boolean => first + second === 10;

export const xvX: Kind<PairBody, Edge> = {
  name: "xv-x",
  body: pairs,
  edgeMark: "xv",
  resolve: ({ cells }, setting) =>
    edgeOf(cells, setting, isSum, { right: "an X between cells whose digits can add up to 10" }),
  scopes: ({ cells }) => [holding(cells, isSum)],
  terms: ({ id, cells }) => [{ term: "sum", owner: id, cells, equals: 10 }],
  marks: ({ at }) => [letterOnEdge("X", at)],
  words: ({ cells }) => ({
    rule: "Digits joined by an X add up to 10.",
    title: "X marks",
    noun: "X",
    plural: "Xs",
    at: cells,
    holds: "add up to 10",
  }),
  alsoSaid: ["xv", "sum to 10", "add up to 10"],
  relabels: "none",
};
