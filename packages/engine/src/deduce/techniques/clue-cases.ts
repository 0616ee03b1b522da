import type { Board } from "../../board/board.ts";
import { isEmpty, isOne, min } from "../../board/digits.ts";
import { at, isSettled, type Knowledge } from "../../board/knowledge.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { clueUnits } from "../clue-units.ts";
import type { Reasons, Technique } from "../deduction.ts";
import { placing } from "../reasons.ts";
import { deductionsOf, leftBy, reasonsOf, type Unit } from "../unit.ts";

const namesOneClue = ({ rules }: Reasons): boolean => rules.length === 1;

/** Settled cells of a clue that leave one digit for another of its cells: nothing of the open ones need be known. */
export const clueForces: Technique = {
  name: "clue-forces",
  level: 1,
  fits: namesOneClue,
  *find(knowledge, board) {
    for (const unit of clueUnits(board)) {
      const open = unit.cells.filter((cell) => !isSettled(knowledge, cell));
      if (open.length === 0) continue;
      const left = leftBy(unit, knowledge);
      if (!left || left.some(isEmpty)) continue;
      for (const cell of open) {
        const digits = left[unit.cells.indexOf(cell)]!;
        if (!isOne(digits) || (open.length > 1 && !isForcedBySettled(unit, knowledge, board, cell))) continue;
        yield placing("clue-forces", 1, cell, min(digits), reasonsOf(unit, knowledge, board));
      }
    }
  },
};

const isForcedBySettled = (unit: Unit, knowledge: Knowledge, board: Board, cell: Cell): boolean => {
  const start = unit.cells.map((other) => (isSettled(knowledge, other) ? at(knowledge, other) : board.domains[other]!));
  const left = unit.alone.possible(start);
  return left !== undefined && isOne(left[unit.cells.indexOf(cell)]!);
};

/** All ways to meet one clue, with the houses that its cells share, agree: digits that no way uses are gone. */
export const clueCases: Technique = {
  name: "clue-cases",
  level: 2,
  settles: true,
  fits: namesOneClue,
  *find(knowledge, board) {
    for (const unit of clueUnits(board)) yield* deductionsOf(unit, "clue-cases", 2, knowledge, board);
  },
};
