import type { App } from "../../app/app.ts";
import type { State } from "../../app/state.ts";
import { noHelpSaid, wrongSaid } from "../../words/help-words.ts";
import { actButton } from "../act-button.ts";
import { type Child, el } from "../el.ts";

export type Light = (letter: string | undefined) => void;

/** What stands beside the board while something is asked. */
export type PanelView = (app: App, state: State, light: Light) => readonly Child[];

export const heading = (text: string): HTMLElement => el("h2", { tabindex: -1, id: "help-title" }, text);

export const thinking = (app: App): HTMLElement =>
  el(
    "p",
    { class: "thinking" },
    el("span", { class: "thought" }, "Thinking"),
    actButton(app, "stop", { class: "quiet" }),
  );

export const buttons = (...children: readonly Child[]): HTMLElement => el("div", { class: "buttons" }, ...children);

export const back = (app: App, label?: string): HTMLElement =>
  actButton(app, "close", { class: "button", ...(label ? { label } : {}) });

/** Why there is no help at all now. */
export const unable = ({ helper }: State): HTMLElement | undefined =>
  helper === "ready" || helper === "starting" ? undefined : el("p", { class: "spoken" }, noHelpSaid[helper]);

export const wrongElement = (app: App, wrong: number): HTMLElement | undefined =>
  wrong === 0
    ? undefined
    : el(
        "p",
        { class: "wrong" },
        `${wrongSaid(wrong)} `,
        actButton(app, "check", { class: "link", label: "Look at that first" }),
      );
