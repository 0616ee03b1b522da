import { type Digits, isOne, min, without } from "../../board/digits.ts";
import { at, isSettled } from "../../board/knowledge.ts";
import type { Technique } from "../deduction.ts";
import { gathering, placing } from "../reasons.ts";

/** The one open cell of a complete house takes the one digit that is missing. */
export const lastCell: Technique = {
  name: "last-cell",
  level: 1,
  *find(knowledge, board) {
    for (const house of board.houses) {
      if (!house.complete) continue;
      const open = house.cells.filter((cell) => !isSettled(knowledge, cell));
      const [cell] = open;
      if (open.length !== 1 || cell === undefined) continue;
      const others = house.cells.filter((other) => other !== cell);
      const missing = others.reduce<Digits>((digits, other) => without(digits, at(knowledge, other)), house.digits);
      if (!isOne(missing) || missing !== at(knowledge, cell)) continue;
      const because = gathering().house(house.id);
      for (const other of others) because.fact(other, at(knowledge, other));
      yield placing("last-cell", 1, cell, min(missing), because.reasons);
    }
  },
};
