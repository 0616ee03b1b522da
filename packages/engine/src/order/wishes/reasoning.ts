import type { Board } from "../../board/board.ts";
import type { ChainOptions } from "../../deduce/chain.ts";
import type { Deduction, Technique } from "../../deduce/deduction.ts";
import { techniques } from "../../deduce/registry.ts";
import { cellNamed } from "../../puzzle/canvas.ts";
import { leansOn, type StepKey, type Wish } from "./wish.ts";

/** The wishes that bind the reasoning itself, so that it may fail to reach the end. */
export const bindsReasoning = ({ wish }: Wish): boolean =>
  ["without-technique", "without-step", "level", "another"].includes(wish);

const isSame = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((id) => b.includes(id));

const isStep = (board: Board, { technique, cell, by }: StepKey, deduction: Deduction): boolean => {
  const at = cellNamed(board.canvas, cell);
  const { places, removes, relates } = deduction;
  const concludes =
    at !== undefined && (places.has(at) || removes.has(at) || relates.some(({ cells }) => cells.includes(at)));
  return concludes && deduction.technique === technique && isSame(leansOn(deduction.because), by);
};

/** Whether a wish forbids a deduction. */
export const forbids = (board: Board, wish: Wish, deduction: Deduction): boolean => {
  if (wish.wish === "without-technique") return deduction.technique === wish.technique;
  if (wish.wish === "level") return deduction.level > wish.most;
  if (wish.wish === "without-step") return isStep(board, wish.step, deduction);
  return wish.wish === "another" && wish.than.some((step) => isStep(board, step, deduction));
};

const without = (technique: Technique, board: Board, wishes: readonly Wish[]): Technique => ({
  ...technique,
  *find(knowledge, on) {
    for (const deduction of technique.find(knowledge, on))
      if (!wishes.some((wish) => forbids(board, wish, deduction))) yield deduction;
  },
});

/** What-ifs are no technique of the ladder: the level below theirs leaves them out. */
export const belowWhatIfs: Readonly<Record<string, number>> = { "what-if": 3, "long-what-if": 4 };

const levelOf = (wish: Wish): number =>
  wish.wish === "level" ? wish.most : wish.wish === "without-technique" ? (belowWhatIfs[wish.technique] ?? 5) : 5;

/** With what the reasoning goes on under these wishes. */
export const reasoningUnder = (
  wishes: readonly Wish[],
  board: Board,
  { level = 5, ladder = techniques }: ChainOptions,
): Required<ChainOptions> => {
  const binding = wishes.filter(bindsReasoning);
  if (binding.length === 0) return { level, ladder };
  const kept = ladder.filter(
    ({ name }) => !binding.some((wish) => wish.wish === "without-technique" && wish.technique === name),
  );
  return {
    level: Math.min(level, ...binding.map(levelOf)),
    ladder: kept.map((technique) => without(technique, board, binding)),
  };
};
