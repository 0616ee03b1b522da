import { knightSign } from "../../marks/signs.ts";
import { type WholeGridBody, wholeGrid } from "../bodies/whole-grid.ts";
import type { Kind } from "../contract.ts";
import { type Everywhere, everywhere, placed } from "../whole-grid.ts";

const moves = [
  [1, -2],
  [1, 2],
  [2, -1],
  [2, 1],
] as const;

export const antiKnight: Kind<WholeGridBody, Everywhere> = {
  name: "anti-knight",
  body: wholeGrid,
  wholeGrid: true,
  resolve: (body, setting) => everywhere(body, setting, moves),
  scopes: ({ pairs }) => pairs.map((cells) => ({ cells, different: true })),
  terms: ({ id, pairs }) => pairs.map((cells) => ({ term: "different", owner: id, cells })),
  marks: () => knightSign(),
  words: ({ where }) => ({
    rule: `${placed(where, "Cells a chess knight's move apart hold different digits")}.`,
    title: "No digit a knight's move away",
    noun: "knight's move",
    plural: "knight's moves",
    at: [],
    holds: "are a knight's move apart, so they differ",
  }),
  alsoSaid: ["knight"],
  relabels: "any",
};
