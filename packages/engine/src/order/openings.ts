import type { Board } from "../board/board.ts";
import type { Deduction } from "../deduce/deduction.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { led } from "../speech/english/sentence.ts";
import { moved } from "../speech/english/telling.ts";
import { type Part, textOf } from "../speech/line.ts";

/** The first three words of a line, by which it is heard to be like another. */
const openingOf = (text: string): string => text.toLowerCase().split(/\s+/).slice(0, 3).join(" ");

export const isAlike = (a: string, b: string): boolean => openingOf(a) === openingOf(b);

const concluded = ({ places, removes }: Deduction): Cell[] => [...places.keys(), ...removes.keys()];

/** How the talk moves from one step to the next, by what has changed. */
const movesOn = (board: Board, before: Deduction, now: Deduction): string => {
  const [from, to] = [concluded(before), concluded(now)];
  const share = board.houses.some(
    ({ cells }) => from.some((cell) => cells.includes(cell)) && to.some((cell) => cells.includes(cell)),
  );
  return share ? moved.near : moved.away;
};

/** What is tried in turn until a line opens unlike the one before it. */
export const unlike = (
  before: string | undefined,
  ways: readonly (() => Part[])[],
  steps: () => readonly [Board, Deduction, Deduction],
): Part[] => {
  const [plain] = ways;
  if (before === undefined) return plain!();
  for (const way of ways) {
    const parts = way();
    if (!isAlike(textOf(parts), before)) return parts;
  }
  return led(movesOn(...steps()), plain!());
};
