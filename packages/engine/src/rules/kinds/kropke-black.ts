import { has } from "../../board/digits.ts";
import { numberedDot } from "../../marks/dot.ts";
import { counted } from "../../speech/english/counts.ts";
import { pairTerm } from "../../terms/make.ts";
import { type PairByBody, pairsBy } from "../bodies/pairs.ts";
import { digitsIn } from "../cells.ts";
import type { Kind } from "../contract.ts";
import { type Edge, edgeOf, holding } from "../edge.ts";

interface BlackDot extends Edge {
  readonly by: number;
  /** The number stands in the dot. */
  readonly written: boolean;
  /** Its cells could hold a 0 but for the dot. */
  readonly zero: boolean;
}

/** Whether one digit is `by` times the other; 0 is in no ratio. */
const inRatio =
  (by: number) =>
  (first: number, second: number): boolean =>
    first * second > 0 && (first === by * second || second === by * first);

const timesOf = (by: number): string => (by === 2 ? "twice" : `${counted(by)} times`);

export const kropkeBlack: Kind<PairByBody, BlackDot> = {
  name: "kropke-black",
  body: pairsBy(2),
  edgeMark: "dot",
  resolve: ({ cells, by: ratio }, setting) => {
    const by = ratio ?? 2;
    const at = ratio === undefined ? {} : { at: ["by"], read: String(by) };
    const edge = edgeOf(cells, setting, inRatio(by), {
      ...at,
      right: `a black dot whose cells can hold a digit and ${timesOf(by)} it`,
    });
    if ("faults" in edge) return edge;
    return { ...edge, by, written: ratio !== undefined, zero: has(digitsIn(setting, edge.cells), 0) };
  },
  scopes: ({ cells, by }) => [holding(cells, inRatio(by))],
  terms: ({ id, cells, by }) => [pairTerm(id, cells, inRatio(by))],
  marks: ({ at, by, written }) => numberedDot("black", at, written ? by : undefined),
  words: ({ cells, by, written, zero }) => ({
    rule: `Of two digits joined by a black dot${written ? ` with a ${by} in it` : ""}, one is ${timesOf(by)} the other${zero ? "; 0 is on none" : ""}.`,
    title: "Black dots",
    noun: "black dot",
    plural: "black dots",
    called: written ? `black dot with a ${by}` : "black dot",
    at: cells,
    holds: `are in the ratio 1 to ${by}`,
  }),
  alsoSaid: ["black ... dot", "black circle", "kropke"],
  relabels: "none",
};
