import type { App } from "../app/app.ts";
import type { State } from "../app/state.ts";
import { actButton } from "./act-button.ts";
import { el, refill } from "./el.ts";

const keptSaid: Readonly<Record<State["kept"], string>> = {
  "not yet": "",
  here: "kept on this device",
  nowhere: "not kept here: this window has no storage; save to a file",
  full: "not kept: the storage is full; save to a file",
};

const checkbox = (app: App, id: "clears" | "timed" | "strip", { settings }: State): HTMLElement =>
  el(
    "label",
    { class: "setting" },
    el("input", { type: "checkbox", checked: settings[id], "data-focus": id, onchange: () => app.run(id) }),
    app.action(id).label(app.state(), app.moment()),
  );

const themeChoice = (app: App, { settings }: State): HTMLElement =>
  el(
    "p",
    { class: "setting", role: "group", "aria-label": "Colours" },
    "Colours ",
    ...(["device", "light", "dark"] as const).flatMap((theme) => [
      actButton(app, `theme-${theme}`, { class: "link", pressed: settings.theme === theme }),
      " ",
    ]),
  );

/** Files, settings, and whether progress is kept. */
export const keepView = (app: App) => {
  const element = el("section", { class: "keep", "aria-label": "Keeping and settings" });
  const update = (state: State, before?: State): void => {
    const isSame = before && state.settings === before.settings && state.kept === before.kept;
    if (isSame && state.position === before.position) return;
    refill(
      element,
      el(
        "p",
        { class: "links" },
        ...["print", "begin-again", "save", "open"].map((id) => actButton(app, id, { class: "link" })),
        el("span", { class: "kept" }, keptSaid[state.kept]),
      ),
      checkbox(app, "clears", state),
      checkbox(app, "timed", state),
      checkbox(app, "strip", state),
      themeChoice(app, state),
    );
  };
  return { element, update };
};
