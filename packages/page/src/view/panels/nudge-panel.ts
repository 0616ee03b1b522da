import type { App } from "../../app/app.ts";
import type { State } from "../../app/state.ts";
import { curly } from "../../words/curly.ts";
import { stuckSaid } from "../../words/help-words.ts";
import { actButton } from "../act-button.ts";
import { type Child, el } from "../el.ts";
import { lineElement } from "../line.ts";
import { momentLink } from "../moment-link.ts";
import { back, buttons, heading, type Light, type PanelView, thinking, unable, wrongElement } from "./panel.ts";

const grade = (name: string, content: Child): HTMLElement =>
  el("div", { class: "grade" }, el("dt", {}, name), el("dd", {}, content));

const gradeButton = (app: App, label: string): HTMLElement => actButton(app, "nudge", { class: "button small", label });

const gradesElement = (app: App, { nudge: shown }: State, light: Light): HTMLElement => {
  const { nudge, grade: far } = shown!;
  if (!nudge) return el("p", { class: "spoken" }, stuckSaid);
  return el(
    "dl",
    { class: "grades" },
    grade("where to look", curly(nudge.where)),
    grade("what to use", far >= 2 ? curly(nudge.use) : gradeButton(app, "Tell me more")),
    grade(
      "the line itself",
      far === 3
        ? lineElement([nudge.line], light)
        : far === 2
          ? gradeButton(app, "Tell me")
          : el("span", { class: "later" }, "after that"),
    ),
  );
};

export const nudgePanel: PanelView = (app, state, light) => {
  const { nudge, asking } = state;
  const removesOnly =
    nudge?.grade === 3 && nudge.nudge?.line.steps.every(({ places }) => Object.keys(places).length === 0);
  return [
    heading("A nudge from where you are"),
    unable(state),
    asking ? thinking(app) : undefined,
    nudge ? wrongElement(app, nudge.wrong) : undefined,
    nudge ? gradesElement(app, state, light) : undefined,
    nudge?.grade === 3
      ? momentLink(app.ground, nudge.nudge?.cells ?? [], (time) => `in the show, ${time}`, "in-show")
      : undefined,
    buttons(
      removesOnly ? actButton(app, "nudge", { class: "button", label: "And then?" }) : undefined,
      removesOnly ? undefined : actButton(app, "check", { class: "button" }),
      back(app),
    ),
  ];
};
