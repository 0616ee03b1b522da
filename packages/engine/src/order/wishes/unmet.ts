import type { Board } from "../../board/board.ts";
import { isSettled } from "../../board/knowledge.ts";
import type { Deduction } from "../../deduce/deduction.ts";
import { type Cell, cellNamed } from "../../puzzle/canvas.ts";
import * as say from "../../speech/english/wishes.ts";
import type { Show } from "../show.ts";
import { fromCorner, isOnlyIn } from "./gates.ts";
import { bindsReasoning, forbids, isByWay } from "./reasoning.ts";
import { isFeaturedBy, isWayWish, type Unmet, type WayWish, type Wish } from "./wish.ts";

/** The first step that settles a cell in the order of a show, and its beat. */
const settledAt = ({ beats }: Show, cell: Cell): number =>
  beats.findIndex(({ steps }) => steps.some(({ deduction }) => deduction.places.has(cell)));

const digitsBefore = ({ beats }: Show, beat: number): number =>
  beats
    .slice(0, beat)
    .reduce((sum, { steps }) => sum + steps.reduce((all, { deduction }) => all + deduction.places.size, 0), 0);

const firstPlaced = ({ steps }: Show): Cell | undefined => steps.flatMap(({ places }) => [...places.keys()])[0];

const concluded = ({ places, removes }: Deduction): Cell[] => [...places.keys(), ...removes.keys()];

/** The beat that goes into the grid before all others are full; -1 where none does. */
const enteredAt = (board: Board, { beats, states }: Show, grid: number): number => {
  const others = [...board.canvas.grids.keys()].filter((cell) => !isOnlyIn(board, cell, grid));
  return beats.findIndex(({ steps, first }) => {
    const isIn = steps.some(({ deduction }) => concluded(deduction).every((cell) => isOnlyIn(board, cell, grid)));
    return isIn && others.some((cell) => !isSettled(states[first]!, cell));
  });
};

/** Why nothing of a show comes by the way that was wished for; undefined where something does. */
const whyUnused = (wish: WayWish, board: Board, show: Show): string | undefined => {
  if (show.steps.some((step) => isByWay(board, wish, step))) return undefined;
  if ("cell" in wish) return say.notReached(board, cellNamed(board.canvas, wish.cell)!);
  const [name = ""] = Object.keys(wish.gone);
  const cell = cellNamed(board.canvas, name);
  return cell === undefined ? say.noSuchCell(name) : say.notNeeded(board, cell);
};

/** Why a wish is not fulfilled by a show; undefined where it is. `rules`: how many beats the rules take. */
const whyNot = (wish: Wish, board: Board, show: Show, rules: number): string | undefined => {
  const cell = "cell" in wish ? cellNamed(board.canvas, wish.cell) : undefined;
  if ("cell" in wish && cell === undefined) return say.noSuchCell(wish.cell);
  if (cell !== undefined && board.givens.has(cell)) return say.isGiven(board, cell);
  const grid = "grid" in wish ? board.puzzle.grids.findIndex(({ id }) => id === wish.grid) : -1;
  if ("grid" in wish && grid < 0) return say.noSuchGrid(wish.grid);
  if (bindsReasoning(wish)) {
    const step = show.steps.find((deduction) => forbids(board, wish, deduction));
    if (step) return isWayWish(wish) ? say.notThatWay(board, step) : say.stillUsed(board, step);
    return isWayWish(wish) ? whyUnused(wish, board, show) : undefined;
  }
  switch (wish.wish) {
    case "first": {
      const beat = settledAt(show, cell!);
      if (beat < 0) return say.notReached(board, cell!);
      return beat === 0 ? undefined : say.notFirst(board, cell!, digitsBefore(show, beat), rules + 1 + beat);
    }
    case "feature": {
      if ("cell" in wish) return settledAt(show, cell!) < 0 ? say.notReached(board, cell!) : undefined;
      if ("rule" in wish && !board.rule(wish.rule)) return say.noSuchRule(wish.rule);
      const isUsed = show.steps.some((step) => isFeaturedBy(wish, step));
      if (isUsed) return undefined;
      return "rule" in wish ? say.ruleUnused(board, wish.rule) : say.techniqueUnused(wish.technique);
    }
    case "later": {
      const beat = enteredAt(board, show, grid);
      return beat < 0 ? undefined : say.entered(board, grid, rules + 1 + beat);
    }
    case "corner": {
      const start = firstPlaced(show);
      const third = Math.ceil(board.puzzle.grids[grid]!.size / 3);
      const isThere = start !== undefined && fromCorner(board, start, grid, wish.corner) < third;
      return isThere ? undefined : say.notInCorner(board, grid, wish.corner);
    }
    case "words":
      return settledAt(show, cell!) < 0 ? say.notReached(board, cell!) : say.tooLong(wish.say);
    default:
      return undefined;
  }
};

/** The wishes that a show does not fulfil, each with the reason. */
export const unmetBy = (wishes: readonly Wish[], board: Board, show: Show, rules: number): Unmet[] =>
  wishes.flatMap((wish) => {
    const why = whyNot(wish, board, show, rules);
    return why === undefined ? [] : [{ wish, why }];
  });
