import type { App } from "../app/app.ts";
import { askable, askingWhy } from "../app/help-actions.ts";
import type { Panel, State } from "../app/state.ts";
import { actButton } from "./act-button.ts";
import { el, refill } from "./el.ts";
import { checkPanel } from "./panels/check-panel.ts";
import { finishPanel } from "./panels/finish-panel.ts";
import { nudgePanel } from "./panels/nudge-panel.ts";
import { buttons, type Light, type PanelView } from "./panels/panel.ts";
import { whyPanel } from "./panels/why-panel.ts";

const idlePanel: PanelView = (app) => [
  buttons(
    actButton(app, "nudge", { class: "button main" }),
    actButton(app, "why", { class: "button" }),
    actButton(app, "check", { class: "button" }),
  ),
];

const panels: Readonly<Record<Panel, PanelView>> = {
  nudge: nudgePanel,
  why: whyPanel,
  check: checkPanel,
  finish: finishPanel,
  rules: idlePanel,
};

/** What a panel shows of the state: nothing else makes it anew, lest a button goes from under a finger. */
const shownIn: Readonly<Record<Panel, readonly (keyof State)[]>> = {
  nudge: ["nudge", "asking", "helper"],
  why: ["why", "asking", "helper", "at"],
  check: ["check", "asking", "helper"],
  finish: ["finished", "plan", "settings"],
  rules: [],
};

const isChanged = (state: State, before: State | undefined): boolean => {
  const { panel } = state;
  if (!before || panel !== before.panel) return true;
  return panel !== undefined && shownIn[panel].some((key) => state[key] !== before[key]);
};

/** A digit typed beside the board asks about it. */
const askTyped = (app: App, container: HTMLElement, key: string): void => {
  const digit = key.trim() === "" ? Number.NaN : Number(key);
  if (app.state().panel !== "why" || !askable(app.state(), app.moment()).includes(digit)) return;
  app.update((state, moment) => askingWhy(state, digit, moment));
  container.querySelector<HTMLElement>(`[data-focus="ask-${digit}"]`)?.focus();
};

/** What is asked and answered beside the board. */
export const helpView = (app: App, light: Light) => {
  const element = el("section", { class: "help", "aria-label": "Help" });
  element.addEventListener("keydown", ({ key }) => askTyped(app, element, key));
  const update = (state: State, before?: State): void => {
    if (!isChanged(state, before)) return;
    const open = element.querySelector("details")?.open ?? false;
    refill(element, ...(state.panel ? panels[state.panel](app, state, light) : idlePanel(app, state, light)));
    const details = element.querySelector("details");
    if (details) details.open = open;
    if (before && state.panel && state.panel !== "rules") element.scrollIntoView({ block: "nearest" });
    if (state.panel !== before?.panel || state.why !== before?.why || state.nudge !== before?.nudge) light(undefined);
  };
  return {
    element,
    update,
    focus: (): void =>
      (element.querySelector<HTMLElement>(".ask-digit") ?? element.querySelector<HTMLElement>("h2"))?.focus(),
  };
};
