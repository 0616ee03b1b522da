import type { App } from "../app/app.ts";
import type { State } from "../app/state.ts";
import type { Ground } from "../solve/ground.ts";
import { armedSaid, spotsSaid } from "../words/spot-words.ts";
import { actButton } from "./act-button.ts";
import { type BoardView, boardView } from "./board-view.ts";
import { el } from "./el.ts";
import { frameView } from "./frame-view.ts";
import { helpView } from "./help-view.ts";
import { howElement } from "./how-view.ts";
import { keepView } from "./keep-view.ts";
import { outside } from "./outside.ts";
import { keepRoom } from "./room.ts";
import { creditElement, rulesElement } from "./rules-view.ts";
import { stripView } from "./strip-view.ts";
import { subjectOf } from "./subject.ts";

/** How many columns at the top left are free of cells for two rows: there the title can stand. */
const freeCorner = ({ data }: Ground): number =>
  Math.min(...data.places.filter(({ row }) => row <= 2).map(({ column }) => column)) - 1;

const pen = (): HTMLElement => {
  const mark = el("span", { class: "pen", "aria-hidden": "true" });
  mark.innerHTML =
    '<svg viewBox="0 0 32 11"><path fill="var(--because)" d="M0 5.5 6 0h10v11H6z"/><path fill="var(--so)" d="M32 5.5 26 0H16v11h10z"/></svg>';
  return mark;
};

const showElement = ({ data }: Ground): HTMLElement | undefined => {
  if (!data.show) return undefined;
  const { name, date, link } = data.show;
  const text = date ? `${name}, ${date}` : name;
  const address = outside(link);
  return el("p", { class: "show" }, pen(), address ? el("a", address, text) : text);
};

const firstHint = "Digits are marks, in one cell or several. When a cell is down to one, settle it.";

/** The line under the board: what was remarked, what the next digit means, the houses of the chosen spot marks. */
const noteOf = (state: State, ground: Ground): string => {
  if (state.remark) return state.remark;
  if (state.waits) return "Which grid? 1 is the topmost.";
  if (state.typed) return `${state.typed}…`;
  const spots = spotsSaid(ground, state.position, state.chosen);
  const isArmed = spots.length === 0 || state.said.text.startsWith("Next digit");
  if (state.place !== "cell" && isArmed) return armedSaid(ground, state.at, state.place, state.turn);
  if (spots.length > 0) return spots.join(" ");
  return Object.keys(state.position.settled).length === 0 ? firstHint : "";
};

export interface PageView {
  readonly board: BoardView;
  update(state: State, before?: State): void;
  toPanel(): void;
}

/** The whole page: what is where, and what is told when something changes. */
export const pageView = (app: App, root: HTMLElement): PageView => {
  const { ground } = app;
  const subject = subjectOf(ground);
  const board = boardView(app, subject);
  const frame = frameView(app, board);
  const help = helpView(app, board.light);
  const [strip, keep] = [stripView(app), keepView(app)];
  const note = el("p", { class: "note" });
  const live = el("p", { class: "heard", role: "status", "aria-live": "polite" });
  const corner = freeCorner(ground);
  const head = el(
    "header",
    { class: "head" },
    el("div", { class: "title" }, el("h1", {}, ground.data.puzzle.title), creditElement(ground)),
    actButton(app, "rules", { class: "link to-rules" }),
  );
  const side = el(
    "aside",
    { class: "side", "aria-label": "Rules and help" },
    showElement(ground),
    rulesElement(ground, subject),
    help.element,
    howElement(ground),
    keep.element,
    actButton(app, "close", { class: "button to-board", label: "Back to the digits" }),
  );
  const page = el(
    "div",
    { class: "page" },
    el("main", { class: "hero" }, head, frame.element, note),
    strip.element,
    side,
    live,
  );
  if (corner >= 4) page.dataset.corner = "";
  const { width, height } = board.size;
  const measures = {
    ratio: width / height,
    corner: corner / width,
    inset: -board.extent.left / width,
    letters: ground.data.puzzle.title.length,
  };
  for (const [name, value] of Object.entries(measures)) page.style.setProperty(`--${name}`, String(value));

  const touch = matchMedia("(pointer: coarse)");
  const update: PageView["update"] = (state, before) => {
    if (state.panel) page.dataset.panel = state.panel;
    else delete page.dataset.panel;
    if (state.finished === undefined) delete page.dataset.finished;
    else page.dataset.finished = "";
    if (state.zoom > 1) page.dataset.zoomed = "";
    else delete page.dataset.zoomed;
    page.dataset.helper = state.helper;
    page.dataset.strip = state.settings.strip || touch.matches ? "on" : "off";
    board.update(state, before);
    frame.update(state, before);
    strip.update();
    help.update(state, before);
    keep.update(state, before);
    note.textContent = noteOf(state, ground);
    if (state.said.n !== before?.said.n) live.textContent = state.said.text;
  };
  update(app.state());
  app.watch(update);
  touch.addEventListener("change", () => update(app.state(), app.state()));
  root.replaceChildren(page);
  keepRoom(page, { head, strip: strip.element, side });
  return {
    board,
    update,
    toPanel: () =>
      app.state().panel === "rules" ? side.querySelector<HTMLElement>("#rules-title")?.focus() : help.focus(),
  };
};
