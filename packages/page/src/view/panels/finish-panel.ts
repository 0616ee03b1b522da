import type { Plan, PlanBeat } from "@solvewright/engine";
import type { App } from "../../app/app.ts";
import type { State } from "../../app/state.ts";
import { stepsOf } from "../../help/steps-of.ts";
import { curly } from "../../words/curly.ts";
import { spanSaid } from "../../words/help-words.ts";
import { actButton } from "../act-button.ts";
import { el } from "../el.ts";
import { momentLink } from "../moment-link.ts";
import { back, buttons, heading, type PanelView } from "./panel.ts";

/** A beat as it is heard without the picture, with the time at which the show comes to it. */
const beatElement = (app: App, plan: Plan, beat: PlanBeat): HTMLElement => {
  const cells = stepsOf(plan, beat).flatMap(({ places }) => Object.keys(places));
  return el(
    "li",
    {},
    curly(beat.placed),
    " ",
    momentLink(app.ground, cells, (time) => time, "time"),
  );
};

const walkthrough = (app: App, { plan }: State): HTMLElement | undefined =>
  plan &&
  el(
    "details",
    { class: "walkthrough" },
    el(
      "summary",
      { "data-focus": "walkthrough" },
      app.ground.data.show ? "How the show goes through it" : "A way through it, to compare",
    ),
    ...plan.acts.map(({ title, beats }) =>
      el("div", {}, el("h3", {}, title), el("ol", {}, ...beats.map((beat) => beatElement(app, plan, beat)))),
    ),
  );

export const finishPanel: PanelView = (app, state) => [
  heading("That was the last one."),
  el("p", { class: "spoken" }, "Every digit is in its place."),
  state.settings.timed
    ? el("p", { class: "spoken time" }, `It took you ${spanSaid(state.finished ?? 0)}.`)
    : actButton(app, "timed", { class: "link", label: "How long did it take?" }),
  walkthrough(app, state),
  buttons(actButton(app, "begin-again", { class: "button" }), back(app)),
];
