import type { Board } from "../../board/board.ts";
import { remembered } from "../../board/remembered.ts";
import type { Technique } from "../deduction.ts";
import { deductionsOf, type Unit, unitOf } from "../unit.ts";

/** Each complete house by itself. */
export const houseUnits = remembered((board: Board): readonly Unit[] =>
  board.houses
    .filter(({ complete }) => complete)
    .map(({ id }) => unitOf(board, { rules: [], houses: [id], terms: [] })),
);

/** All ways to fill one house agree: sets of cells and digits too large to have a name of their own. */
export const houseCases: Technique = {
  name: "house-cases",
  level: 3,
  settles: true,
  fits: ({ rules }) => rules.length === 0,
  *find(knowledge, board) {
    for (const unit of houseUnits(board)) yield* deductionsOf(unit, "house-cases", 3, knowledge, board);
  },
};
