import { type Board, nameOf } from "@solvewright/engine";
import { boardScene, boardSvg, type Extent, grown } from "@solvewright/press";
import type { App } from "../app/app.ts";
import { pressed } from "../app/keys.ts";
import { focused } from "../app/move-actions.ts";
import type { State } from "../app/state.ts";
import type { Ground } from "../solve/ground.ts";
import { cellHeard } from "../words/heard.ts";
import { viewOf } from "./drawn.ts";
import { el } from "./el.ts";
import { listenForPointers } from "./pointers.ts";

/** Room for brackets, rings and letters at the edge. */
const room = 0.1;

export interface BoardView {
  readonly element: HTMLElement;
  /** Columns by rows of what is drawn, in cells. */
  readonly size: { readonly width: number; readonly height: number };
  readonly extent: Extent;
  update(state: State, before?: State): void;
  focus(): void;
  light(letter: string | undefined): void;
  /** As it is printed: what stands, nothing chosen or told. */
  plain(isPlain: boolean): void;
}

const percent = (share: number): string => `${share * 100}%`;

interface Cells {
  readonly element: HTMLElement;
  readonly byName: ReadonlyMap<string, HTMLElement>;
}

const cellElement = (ground: Ground, name: string, extent: Extent): HTMLElement => {
  const { place, given } = ground.cells.get(name)!;
  const [width, height] = [extent.right - extent.left, extent.bottom - extent.top];
  const cell = el("div", {
    role: "gridcell",
    class: "cell",
    "data-cell": name,
    tabindex: -1,
    "aria-colindex": place.column,
    "aria-readonly": given === undefined ? undefined : "true",
  });
  cell.style.left = percent((place.column - 1 - extent.left) / width);
  cell.style.top = percent((place.row - 1 - extent.top) / height);
  cell.style.width = percent(1 / width);
  cell.style.height = percent(1 / height);
  return cell;
};

const cellsElement = (ground: Ground, { canvas }: Board, extent: Extent): Cells => {
  const byName = new Map<string, HTMLElement>();
  const rows = Array.from({ length: canvas.rows }, (_, k) => {
    const cells = ground.data.places.filter(({ row }) => row === k + 1).map((place) => nameOf(place));
    for (const name of cells) byName.set(name, cellElement(ground, name, extent));
    return el("div", { role: "row", class: "row", "aria-rowindex": k + 1 }, ...cells.map((name) => byName.get(name)!));
  }).filter((row) => row.childElementCount > 0);
  const element = el(
    "div",
    {
      role: "grid",
      class: "cells",
      "aria-label": `${ground.data.puzzle.title}, the board`,
      "aria-describedby": "how-keys",
      "aria-multiselectable": "true",
      "aria-rowcount": canvas.rows,
      "aria-colcount": canvas.columns,
    },
    ...rows,
  );
  return { element, byName };
};

/** The texts of settled digits that were not there before grow into their place. */
const settleIn = (drawing: HTMLElement, subject: Board, fresh: readonly string[]): void => {
  if (fresh.length === 0 || matchMedia("(prefers-reduced-motion: reduce)").matches) return;
  const places = fresh.map((name) => subject.canvas.places[subject.canvas.names.indexOf(name)]!);
  for (const text of drawing.querySelectorAll<SVGTextElement>('[data-layer="digit"] text')) {
    const [x, y] = [Number(text.getAttribute("x")) / 100, Number(text.getAttribute("y")) / 100];
    const isFresh = places.some(({ row, column }) => Math.ceil(x) === column && Math.ceil(y) === row);
    if (isFresh)
      text.animate([{ transform: "scale(.94)" }, { transform: "scale(1)" }], {
        duration: 140,
        easing: "cubic-bezier(.2, .7, .2, 1)",
      });
  }
};

/** Reasons appear in the order of their letters. */
const reasonsIn = (drawing: HTMLElement): void => {
  if (matchMedia("(prefers-reduced-motion: reduce)").matches) return;
  for (const part of drawing.querySelectorAll<SVGElement>("[data-of]")) {
    const letter = part.dataset.of ?? "";
    if (letter.length !== 1) continue;
    const delay = (letter.charCodeAt(0) - 97) * 90;
    part.animate([{ opacity: 0 }, {}], { duration: 220, delay, fill: "backwards" });
  }
};

export const boardView = (app: App, subject: Board): BoardView => {
  const { ground } = app;
  const extent = grown(boardScene(subject, { sentences: false }).extent, room);
  const size = { width: extent.right - extent.left, height: extent.bottom - extent.top };
  const cells = cellsElement(ground, subject, extent);
  const drawing = el("div", { class: "drawing", "aria-hidden": "true" });
  const element = el("div", { class: "board" }, drawing, cells.element);
  let isPlain = false;

  const draw = (state: State): void => {
    const view = isPlain ? { written: state.position, sentences: false } : viewOf(state, ground);
    drawing.innerHTML = boardSvg(subject, { ...view, theme: "variables", window: extent, id: "b" });
  };
  const describe = (state: State, before?: State): void => {
    for (const [name, cell] of cells.byName) {
      if (state.position !== before?.position) cell.setAttribute("aria-label", cellHeard(ground, state.position, name));
      cell.setAttribute("aria-selected", String(state.chosen.includes(name)));
      cell.tabIndex = name === state.at ? 0 : -1;
    }
    cells.element.dataset.chosen = state.chosen.length === 1 ? "one" : "other";
  };
  const followFocus = (state: State, before?: State): void => {
    const { activeElement } = document;
    if (state.at !== before?.at && cells.element.contains(activeElement))
      cells.byName.get(state.at)?.focus({ preventScroll: true });
  };
  const update: BoardView["update"] = (state, before) => {
    describe(state, before);
    draw(state);
    followFocus(state, before);
    if (!before) return;
    settleIn(
      drawing,
      subject,
      Object.keys(state.position.settled).filter((name) => !(name in before.position.settled)),
    );
    if (state.nudge !== before.nudge || state.why !== before.why) reasonsIn(drawing);
  };

  cells.element.addEventListener("keydown", (event) => {
    if (pressed(app, event) || event.key === " ") event.preventDefault();
  });
  cells.element.addEventListener("focusin", ({ target, relatedTarget }) => {
    const name = (target as HTMLElement).dataset.cell;
    if (!name) return;
    const isEntered = !cells.element.contains(relatedTarget as Node | null);
    if (name !== app.state().at || isEntered) app.update((state) => focused(state, name));
  });
  listenForPointers(app, element, extent);
  return {
    element,
    size,
    extent,
    update,
    focus: () => cells.byName.get(app.state().at)?.focus({ preventScroll: true }),
    light: (letter) => {
      for (const part of drawing.querySelectorAll<SVGElement>("[data-of]"))
        part.classList.toggle(
          "dim",
          letter !== undefined && part.dataset.of !== letter && part.dataset.of?.length === 1,
        );
    },
    plain: (on) => {
      isPlain = on;
      draw(app.state());
    },
  };
};
