import type { App } from "../app/app.ts";
import type { State } from "../app/state.ts";
import type { BoardView } from "./board-view.ts";
import { el } from "./el.ts";

/** What the board is seen through: it scrolls where the board is zoomed, and goes to the grid that the lens holds. */
export const frameView = (app: App, board: BoardView) => {
  const element = el("div", { class: "frame" }, board.element);
  const narrow = matchMedia("(max-width: 62.49rem)");
  const { extent, size } = board;

  const gridIn = ({ lens }: State) =>
    lens === undefined || !narrow.matches ? undefined : app.ground.data.puzzle.grids[lens];
  /** A grid alone fills the width of a narrow screen. */
  const zoomOf = (state: State): number => {
    const grid = gridIn(state);
    return grid ? Math.max(state.zoom, size.width / (grid.size + 0.8)) : state.zoom;
  };
  const goToGrid = (state: State): void => {
    const grid = gridIn(state);
    const cell = board.element.clientWidth / size.width;
    if (grid) element.scrollTo((grid.column - 1.4 - extent.left) * cell, (grid.row - 1.4 - extent.top) * cell);
  };
  /** The cell at hand comes into the middle when the board grows, and else just into sight. */
  const follow = (state: State, before: State): void => {
    const where = before.zoom === 1 && state.zoom > 1 ? "center" : "nearest";
    if (where === "nearest" && state.at === before.at) return;
    element.querySelector(`[data-cell="${state.at}"]`)?.scrollIntoView({ block: where, inline: where });
  };
  const update = (state: State, before?: State): void => {
    const zoom = zoomOf(state);
    board.element.style.setProperty("--zoom", String(zoom));
    if (state.lens !== before?.lens) goToGrid(state);
    else if (before && zoom > 1) follow(state, before);
  };
  return { element, update };
};
