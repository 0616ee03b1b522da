import { numberedDot } from "../../marks/dot.ts";
import { pairTerm } from "../../terms/make.ts";
import { type PairByBody, pairsBy } from "../bodies/pairs.ts";
import type { Kind } from "../contract.ts";
import { type Edge, edgeOf, holding } from "../edge.ts";

interface WhiteDot extends Edge {
  readonly by: number;
  /** The number stands in the dot. */
  readonly written: boolean;
}

const differ =
  (by: number) =>
  (first: number, second: number): boolean =>
    Math.abs(first - second) === by;

export const kropkeWhite: Kind<PairByBody, WhiteDot> = {
  name: "kropke-white",
  body: pairsBy(1),
  edgeMark: "dot",
  resolve: ({ cells, by: difference }, setting) => {
    const by = difference ?? 1;
    const at = difference === undefined ? {} : { at: ["by"], read: String(by) };
    const edge = edgeOf(cells, setting, differ(by), {
      ...at,
      right: `a white dot whose cells can hold digits that differ by ${by}`,
    });
    return "faults" in edge ? edge : { ...edge, by, written: difference !== undefined };
  },
  scopes: ({ cells, by }) => [holding(cells, differ(by))],
  terms: ({ id, cells, by }) => [pairTerm(id, cells, differ(by))],
  marks: ({ at, by, written }) => numberedDot("white", at, written ? by : undefined),
  words: ({ cells, by, written }) => ({
    rule: written
      ? `Digits joined by a white dot with a ${by} in it differ by exactly ${by}.`
      : "Digits joined by a white dot differ by 1.",
    title: "White dots",
    noun: "white dot",
    plural: "white dots",
    called: written ? `white dot with a ${by}` : "white dot",
    at: cells,
    holds: `differ by ${by}`,
  }),
  alsoSaid: ["white ... dot", "white circle", "kropke"],
  relabels: "mirror",
};
