import { isOne, min, without } from "../../board/digits.ts";
import { at, isSettled } from "../../board/knowledge.ts";
import type { Technique } from "../deduction.ts";
import { gathering, placing } from "../reasons.ts";
import { gatherWhyNone } from "../why-not.ts";

/** A cell that has one digit left. */
export const onlyDigit: Technique = {
  name: "only-digit",
  level: 1,
  *find(knowledge, board) {
    for (const [cell, digits] of knowledge.possible.entries()) {
      if (isSettled(knowledge, cell) || !isOne(digits)) continue;
      const because = gathering();
      gatherWhyNone(because, knowledge, board, cell, without(board.domains[cell]!, at(knowledge, cell)));
      yield placing("only-digit", 1, cell, min(digits), because.reasons);
    }
  },
};
