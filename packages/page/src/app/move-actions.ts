import { between, type Direction, endOf, gridAfter, stepped } from "../solve/moves.ts";
import { cellsHeard } from "../words/heard.ts";
import { type Action, action } from "./action.ts";
import type { Moment } from "./commit.ts";
import { lacking, type State, saying } from "./state.ts";

/** The chosen cells become these; what was being typed or waited for is dropped. */
const choosing = (state: State, at: string, chosen: readonly string[]): State => {
  const place = state.stays ? state.place : "cell";
  const next: State = { ...state, at, chosen: [...new Set(chosen)], typed: "", waits: false, place, remark: "" };
  // An answer belongs to the cell that was asked about.
  return at !== state.at && next.why?.answer ? { ...next, why: {} } : next;
};

const moving = (
  id: string,
  label: string,
  keys: readonly string[],
  to: (state: State, moment: Moment) => string,
): Action =>
  action({
    id,
    label,
    keys,
    run: (state, moment) => {
      const at = to(state, moment);
      return choosing(state, at, [at]);
    },
  });

const extending = (direction: Direction, key: string): Action =>
  action({
    id: `extend-${direction}`,
    label: `Choose the next cell ${direction} too`,
    keys: [`Shift+${key}`],
    run: (state, { ground }) => {
      const at = stepped(ground, state.at, direction);
      const next = choosing(state, at, [...state.chosen, state.at, at]);
      return saying(next, `${cellsHeard(next.chosen)} chosen`);
    },
  });

const directions: readonly (readonly [Direction, string])[] = [
  ["left", "ArrowLeft"],
  ["right", "ArrowRight"],
  ["up", "ArrowUp"],
  ["down", "ArrowDown"],
];

export const moveActions: readonly Action[] = [
  ...directions.map(([direction, key]) =>
    moving(`go-${direction}`, `Go ${direction}`, [key], ({ at }, { ground }) => stepped(ground, at, direction)),
  ),
  ...directions.map(([direction, key]) => extending(direction, key)),
  moving("row-start", "To the start of the row", ["Home"], ({ at }, { ground }) => endOf(ground, at, "first", false)),
  moving("row-end", "To the end of the row", ["End"], ({ at }, { ground }) => endOf(ground, at, "last", false)),
  moving("board-start", "To the first cell", ["Mod+Home"], ({ at }, { ground }) => endOf(ground, at, "first", true)),
  moving("board-end", "To the last cell", ["Mod+End"], ({ at }, { ground }) => endOf(ground, at, "last", true)),
  moving("next-grid", "To the next grid", ["PageDown"], ({ at }, { ground }) => gridAfter(ground, at, 1)),
  moving("grid-before", "To the grid before", ["PageUp"], ({ at }, { ground }) => gridAfter(ground, at, -1)),
  action({
    id: "choose-all",
    label: "Choose every open cell",
    keys: ["Mod+a"],
    run: (state, { ground }) => {
      const open = [...ground.cells.values()].filter(
        ({ name, given }) => given === undefined && state.position.settled[name] === undefined,
      );
      const next = choosing(
        state,
        state.at,
        open.map(({ name }) => name),
      );
      return saying(next, `${cellsHeard(next.chosen)} chosen`);
    },
  }),
  action({
    id: "several",
    label: "Several",
    run: (state) => ({ ...state, several: !state.several }),
  }),
  action({
    id: "end",
    label: "Let go",
    keys: ["Escape"],
    effect: "to-board",
    run: (state) => {
      if (state.typed !== "" || state.waits || state.place !== "cell")
        return { ...state, typed: "", waits: false, place: "cell", stays: false, remark: "" };
      if (state.lens !== undefined) return saying(lacking(state, "lens"), "All grids");
      if (state.panel !== undefined) return lacking(state, "panel");
      return { ...state, chosen: [], several: false, remark: "" };
    },
  }),
];

/** A cell touched or clicked: alone, added to the others, or as the far corner of a rectangle. */
export const touching = (state: State, cell: string, how: "alone" | "also" | "through", { ground }: Moment): State => {
  if (how === "through") return choosing(state, cell, between(ground, state.at, cell));
  if (how === "alone" && !state.several) return choosing(state, cell, [cell]);
  const isOut = state.chosen.includes(cell) && state.chosen.length > 1;
  return choosing(state, cell, isOut ? state.chosen.filter((other) => other !== cell) : [...state.chosen, cell]);
};

/** A cell that the focus came to; where nothing is chosen it is. */
export const focused = (state: State, cell: string): State =>
  state.chosen.length === 0 ? choosing(state, cell, [cell]) : { ...state, at: cell };

/** A cell reached while dragging. */
export const dragging = (state: State, cell: string): State =>
  state.chosen.includes(cell) ? { ...state, at: cell } : choosing(state, cell, [...state.chosen, cell]);
