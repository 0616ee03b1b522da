import { checkSaid, whereSaid } from "../../words/help-words.ts";
import { actButton } from "../act-button.ts";
import { el } from "../el.ts";
import { back, buttons, heading, type PanelView, thinking, unable } from "./panel.ts";

export const checkPanel: PanelView = (app, state) => {
  const { check, asking } = state;
  const isOdd = (check?.wrong.length ?? 0) > 0;
  return [
    heading(check ? checkSaid(check) : "Check my cells"),
    unable(state),
    asking ? thinking(app) : undefined,
    check?.where ? el("p", { class: "spoken" }, whereSaid(check.wrong.length)) : undefined,
    buttons(isOdd && !check?.where ? actButton(app, "where", { class: "button" }) : undefined, back(app)),
  ];
};
