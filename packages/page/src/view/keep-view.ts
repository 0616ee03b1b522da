import type { App } from "../app/app.ts";
import type { State } from "../app/state.ts";
import { actButton, lastingButton } from "./act-button.ts";
import { type Child, el, refill } from "./el.ts";

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

const settings = (app: App, state: State): readonly Child[] => [
  ...(["clears", "timed", "strip"] as const).map((id) => checkbox(app, id, state)),
  themeChoice(app, state),
];

/** Files, settings, and whether progress is kept. */
export const keepView = (app: App) => {
  const files = ["print", "begin-again", "save", "open"].map((id) => lastingButton(app, id, () => ({ class: "link" })));
  const kept = el("span", { class: "kept" });
  const links = el("p", { class: "links" }, ...files.map((button) => button.element), kept);
  const choices = el("div", {});
  const folded = el("details", { class: "settings" }, el("summary", {}, "Settings"), choices);
  const element = el("section", { class: "keep", "aria-label": "Keeping and settings" }, links, folded);
  const update = (state: State, before?: State): void => {
    for (const button of files) button.update();
    kept.textContent = keptSaid[state.kept];
    if (state.settings !== before?.settings) refill(choices, ...settings(app, state));
  };
  return { element, update };
};
