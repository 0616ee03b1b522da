import type { App } from "../app/app.ts";
import { standing } from "../app/entry-actions.ts";
import type { State } from "../app/state.ts";
import { actButton } from "./act-button.ts";
import { type Child, el, refill } from "./el.ts";

const shapes = { cell: undefined, row: "shape-row", column: "shape-column", region: "shape-region" } as const;

const tools = (app: App, state: State): HTMLElement =>
  el(
    "div",
    { class: "tools" },
    actButton(app, "undo"),
    actButton(app, "redo"),
    actButton(app, "several", { pressed: state.several, said: "Several: each tap adds a cell" }),
    actButton(app, "zoom", { pressed: state.zoom > 1 }),
    app.action("one-grid").when(state, app.moment()) ? actButton(app, "one-grid", { pressed: state.lens !== undefined }) : undefined,
  );

const digits = (app: App, state: State): HTMLElement => {
  const rows = app.ground.digits.length > 10 ? 2 : 1;
  const box = el("div", { class: "digits", role: "group", "aria-label": "digits" });
  box.style.setProperty("--many", String(Math.ceil(app.ground.digits.length / rows)));
  box.append(
    ...app.ground.digits.map((digit) =>
      actButton(app, `digit-${digit}`, { class: "digit", pressed: standing(state, app.ground, digit) }),
    ),
  );
  return box;
};

const placeButton = (app: App, state: State, place: State["place"]): Child => {
  const button = actButton(app, `place-${place}`, { class: "place", pressed: state.place === place });
  const shape = shapes[place];
  if (shape) button.prepend(el("span", { class: `shape ${shape}`, "aria-hidden": "true" }));
  return button;
};

const places = (app: App, state: State): HTMLElement =>
  el(
    "div",
    { class: "places" },
    ...(["cell", "row", "column", "region"] as const).map((place) => placeButton(app, state, place)),
    actButton(app, "settle", { class: "settle" }),
  );

const asks = (app: App): HTMLElement =>
  el("div", { class: "asks" }, actButton(app, "why", { class: "button" }), actButton(app, "nudge", { class: "button" }));

/** Digits below the board, for those who solve by touch or by mouse alone. */
export const stripView = (app: App) => {
  const element = el("div", { class: "strip", role: "group", "aria-label": "Entry" });
  const update = (state: State): void =>
    refill(element, tools(app, state), digits(app, state), places(app, state), asks(app));
  return { element, update };
};
