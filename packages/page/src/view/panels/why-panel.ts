import { aDigit, counted } from "@solvewright/engine";
import type { App } from "../../app/app.ts";
import { askable, askingWhy } from "../../app/help-actions.ts";
import type { State } from "../../app/state.ts";
import { cellIn } from "../../solve/ground.ts";
import { toldNow } from "../drawn.ts";
import { el } from "../el.ts";
import { lineElement } from "../line.ts";
import { momentLink } from "../moment-link.ts";
import { back, buttons, heading, type PanelView, thinking, unable, wrongElement } from "./panel.ts";

const digitButtons = (app: App, state: State): HTMLElement => {
  const digits = askable(state, app.moment());
  const group = el("div", { class: "ask", role: "group", "aria-label": "ask about" });
  for (const digit of digits)
    group.append(
      el(
        "button",
        {
          type: "button",
          class: "ask-digit",
          "data-focus": `ask-${digit}`,
          "aria-pressed": String(state.why?.digit === digit),
          onclick: () => app.update((now, moment) => askingWhy(now, digit, moment)),
        },
        String(digit),
      ),
    );
  return group;
};

/** How many steps there were before the ones that are told. */
const stepsSaid = ({ why }: State): HTMLElement | undefined => {
  const { lines = [], steps = 0 } = why?.answer ?? {};
  return steps > lines.length
    ? el("p", { class: "aside" }, `It takes ${steps} steps from here. The last ${counted(lines.length)}:`)
    : undefined;
};

export const whyPanel: PanelView = (app, state, light) => {
  const { why, asking } = state;
  const link = why?.answer
    ? momentLink(app.ground, [state.at], (time) => `See it in the show, ${time}`, "button main")
    : undefined;
  return [
    heading(why?.digit === undefined ? "Why can’t this be …" : `Why can’t this be ${aDigit(why.digit)}?`),
    el("p", { class: "heard" }, `About ${cellIn(app.ground, state.at).said}.`),
    unable(state),
    asking ? thinking(app) : undefined,
    why?.answer && why.answer.wrong > 0 ? wrongElement(app, why.answer.wrong) : undefined,
    stepsSaid(state),
    why?.answer ? lineElement(toldNow(state), light) : undefined,
    el(
      "p",
      { class: "aside" },
      why?.digit === undefined ? "Choose a cell, then a digit to ask about." : "or ask about another digit",
    ),
    digitButtons(app, state),
    buttons(link, back(app, link && "Close")),
  ];
};
