import type { Board } from "../../board/board.ts";
import { both, type Digits, digitsOf, none, without } from "../../board/digits.ts";
import type { Knowledge } from "../../board/knowledge.ts";
import type { ChainOptions } from "../../deduce/chain.ts";
import type { Conclusion, Deduction, Technique } from "../../deduce/deduction.ts";
import type { Judge } from "../../deduce/judge.ts";
import { addRemoval } from "../../deduce/reasons.ts";
import { techniques } from "../../deduce/registry.ts";
import { type Cell, cellNamed } from "../../puzzle/canvas.ts";
import { nothing, wayTo } from "../other-ways/way.ts";
import { isWayWish, leansOn, type StepKey, type WayKey, type WayWish, type Wish } from "./wish.ts";

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

/** Whether a deduction is reached in this way. */
const isBy = ({ technique, because }: Deduction, way: WayKey): boolean =>
  technique === way.technique && isSame(leansOn(because), way.by);

/** Of what a deduction concludes, that which the wish wants by its way alone; undefined where that is nothing. */
const wantedOf = (board: Board, wish: WayWish, { places, removes }: Deduction): Conclusion | undefined => {
  if ("cell" in wish) {
    const cell = cellNamed(board.canvas, wish.cell);
    const digit = cell === undefined ? undefined : places.get(cell);
    return digit === undefined ? undefined : { ...nothing, places: new Map([[cell!, digit]]) };
  }
  const wanted = new Map<Cell, Digits>();
  for (const [name, digits] of Object.entries(wish.gone)) {
    const cell = cellNamed(board.canvas, name);
    if (cell !== undefined) addRemoval(wanted, cell, both(removes.get(cell) ?? none, digitsOf(digits)));
  }
  return wanted.size === 0 ? undefined : { ...nothing, removes: wanted };
};

/** Whether a deduction gives something of what the wish wants, and by its way. */
export const isByWay = (board: Board, wish: WayWish, deduction: Deduction): boolean =>
  wantedOf(board, wish, deduction) !== undefined && isBy(deduction, wish.way);

/** What a deduction concludes beside that. */
const restOf = (deduction: Deduction, wanted: Conclusion): Deduction | undefined => {
  const removes = new Map<Cell, Digits>();
  for (const [cell, digits] of deduction.removes)
    addRemoval(removes, cell, without(digits, wanted.removes.get(cell) ?? none));
  return removes.size === 0 ? undefined : { ...deduction, removes };
};

/** What the wish wants, where the deduction gives it by its way: small and proved. */
const byWay = (wish: WayWish, deduction: Deduction, knowledge: Knowledge, board: Board, judge: Judge) => {
  const wanted = wantedOf(board, wish, deduction);
  const small = wanted && wayTo(wanted, deduction, knowledge, board, judge);
  return small && isBy(small, wish.way) ? small : undefined;
};

/** A deduction, and of what the wish wants by its way alone only what that way gives, small and proved. */
const onlyBy = (
  wish: WayWish,
  deduction: Deduction,
  knowledge: Knowledge,
  board: Board,
  judge: Judge,
): readonly Deduction[] => {
  const wanted = wantedOf(board, wish, deduction);
  if (!wanted) return [deduction];
  return [byWay(wish, deduction, knowledge, board, judge), restOf(deduction, wanted)].filter(
    (step) => step !== undefined,
  );
};

/** Whether a wish forbids a deduction. */
export const forbids = (board: Board, wish: Wish, deduction: Deduction): boolean => {
  if (isWayWish(wish)) return wantedOf(board, wish, deduction) !== undefined && !isBy(deduction, wish.way);
  if (wish.wish === "without-technique") return deduction.technique === wish.technique;
  if (wish.wish === "level") return deduction.level > wish.most;
  if (wish.wish === "without-step") return isStep(board, wish.step, deduction);
  return wish.wish === "another" && "than" in wish && wish.than.some((step) => isStep(board, step, deduction));
};

const forbidding = (technique: Technique, board: Board, wishes: readonly Wish[]): Technique => ({
  ...technique,
  *find(knowledge, on) {
    for (const deduction of technique.find(knowledge, on))
      if (!wishes.some((wish) => forbids(board, wish, deduction))) yield deduction;
  },
});

const keepingTo = (technique: Technique, wish: WayWish, judge: Judge): Technique => ({
  ...technique,
  *find(knowledge, board) {
    for (const deduction of technique.find(knowledge, board)) yield* onlyBy(wish, deduction, knowledge, board, judge);
  },
});

/** Before everything else: looked for late, a way has often given place to another by what has come to be known. */
const firstBy = (wish: WayWish, ladder: readonly Technique[], judge: Judge): Technique => ({
  name: wish.way.technique,
  level: 0,
  *find(knowledge, board) {
    for (const technique of ladder.filter(({ name, looser }) => [name, looser].includes(wish.way.technique)))
      for (const deduction of technique.find(knowledge, board)) {
        const step = byWay(wish, deduction, knowledge, board, judge);
        if (step) yield step;
      }
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
  judge: Judge,
): Required<ChainOptions> => {
  const binding = wishes.filter(bindsReasoning);
  if (binding.length === 0) return { level, ladder };
  const kept = ladder.filter(
    ({ name }) => !binding.some((wish) => wish.wish === "without-technique" && wish.technique === name),
  );
  const ways = binding.filter(isWayWish);
  const others = binding.filter((wish) => !isWayWish(wish));
  const allowed = kept.map((technique) => forbidding(technique, board, others));
  return {
    level: Math.min(level, ...binding.map(levelOf)),
    ladder: [
      ...ways.map((wish) => firstBy(wish, allowed, judge)),
      ...allowed.map((technique) => ways.reduce((bound, wish) => keepingTo(bound, wish, judge), technique)),
    ],
  };
};
