import { kingSign } from "../../marks/signs.ts";
import { type WholeGridBody, wholeGrid } from "../bodies/whole-grid.ts";
import type { Kind } from "../contract.ts";
import { type Everywhere, everywhere, placed } from "../whole-grid.ts";

const moves = [
  [0, 1],
  [1, -1],
  [1, 0],
  [1, 1],
] as const;

export const antiKing: Kind<WholeGridBody, Everywhere> = {
  name: "anti-king",
  body: wholeGrid,
  wholeGrid: true,
  resolve: (body, setting) => everywhere(body, setting, moves),
  scopes: ({ pairs }) => pairs.map((cells) => ({ cells, different: true })),
  terms: ({ id, pairs }) => pairs.map((cells) => ({ term: "different", owner: id, cells })),
  marks: () => kingSign(),
  words: ({ where }) => ({
    rule: `${placed(where, "Cells that touch, if only by a corner, hold different digits")}.`,
    title: "No digit a king's move away",
    noun: "king's move",
    plural: "king's moves",
    at: [],
    holds: "touch, so they differ",
  }),
  alsoSaid: ["king", "touch", "diagonally"],
  relabels: "any",
};
