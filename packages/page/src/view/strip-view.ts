import type { App } from "../app/app.ts";
import { standing } from "../app/entry-actions.ts";
import type { State } from "../app/state.ts";
import { lastingButton } from "./act-button.ts";
import { el } from "./el.ts";

type Lasting = ReturnType<typeof lastingButton>;
const elementsOf = (buttons: readonly Lasting[]): HTMLElement[] => buttons.map(({ element }) => element);

const tools = (app: App): readonly Lasting[] => [
  lastingButton(app, "undo"),
  lastingButton(app, "redo"),
  lastingButton(app, "several", () => ({ pressed: app.state().several, said: "Several: each tap adds a cell" })),
  lastingButton(app, "zoom", () => ({ pressed: app.state().zoom > 1 })),
  ...(app.ground.data.puzzle.grids.length > 1
    ? [lastingButton(app, "one-grid", () => ({ pressed: app.state().lens !== undefined }))]
    : []),
];

const digits = (app: App): readonly Lasting[] =>
  app.ground.digits.map((digit) =>
    lastingButton(app, `digit-${digit}`, () => ({
      class: "digit",
      pressed: standing(app.state(), app.ground, digit),
    })),
  );

const digitRows = (app: App, buttons: readonly Lasting[]): HTMLElement => {
  const rows = buttons.length > 10 ? 2 : 1;
  const box = el("div", { class: "digits", role: "group", "aria-label": "digits" }, ...elementsOf(buttons));
  box.style.setProperty("--many", String(Math.ceil(app.ground.digits.length / rows)));
  return box;
};

const shapes = { cell: undefined, row: "shape-row", column: "shape-column", region: "shape-region" } as const;

const placeButton = (app: App, place: State["place"]): Lasting => {
  const button = lastingButton(app, `place-${place}`, () => ({ class: "place", pressed: app.state().place === place }));
  const shape = shapes[place];
  if (shape) button.element.prepend(el("span", { class: `shape ${shape}`, "aria-hidden": "true" }));
  return button;
};

const places = (app: App): readonly Lasting[] => [
  ...(["cell", "row", "column", "region"] as const).map((place) => placeButton(app, place)),
  lastingButton(app, "settle", () => ({ class: "settle" })),
];

/** Digits below the board, for those who solve by touch or by mouse alone. */
export const stripView = (app: App) => {
  const [tool, digit, place] = [tools(app), digits(app), places(app)];
  const ask = ["why", "nudge"].map((id) => lastingButton(app, id, () => ({ class: "button" })));
  const element = el(
    "div",
    { class: "strip", role: "region", "aria-label": "Entry" },
    el("div", { class: "tools" }, ...elementsOf(tool)),
    digitRows(app, digit),
    el("div", { class: "places" }, ...elementsOf(place)),
    el("div", { class: "asks" }, ...elementsOf(ask)),
  );
  const update = (): void => {
    for (const button of [...tool, ...digit, ...place, ...ask]) button.update();
  };
  return { element, update };
};
