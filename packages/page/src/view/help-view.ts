import { aDigit } from "@solvewright/engine";
import type { App } from "../app/app.ts";
import { askable, askingWhy } from "../app/help-actions.ts";
import type { Panel, State } from "../app/state.ts";
import { cellIn } from "../solve/ground.ts";
import { curly } from "../words/curly.ts";
import { checkSaid, noHelpSaid, spanSaid, stuckSaid, whereSaid, wrongSaid } from "../words/help-words.ts";
import { actButton } from "./act-button.ts";
import { toldNow } from "./drawn.ts";
import { type Child, el, refill } from "./el.ts";
import { lineElement } from "./line.ts";

type Light = (letter: string | undefined) => void;

const heading = (text: string): HTMLElement => el("h2", { tabindex: -1, id: "help-title" }, text);

const thinking = (app: App): HTMLElement =>
  el(
    "p",
    { class: "thinking" },
    el("span", { class: "thought" }, "Thinking"),
    actButton(app, "stop", { class: "quiet" }),
  );

const buttons = (...children: readonly Child[]): HTMLElement => el("div", { class: "buttons" }, ...children);

const back = (app: App): HTMLElement => actButton(app, "close", { class: "button" });

/** Why there is no help at all now. */
const unable = ({ helper }: State): HTMLElement | undefined =>
  helper === "ready" || helper === "starting" ? undefined : el("p", { class: "spoken" }, noHelpSaid[helper]);

const grade = (name: string, content: Child): HTMLElement =>
  el("div", { class: "grade" }, el("dt", {}, name), el("dd", {}, content));

const gradeButton = (app: App, label: string): HTMLElement => actButton(app, "nudge", { class: "button small", label });

const gradesElement = (app: App, { nudge: shown }: State, light: Light): HTMLElement => {
  const { nudge, grade: far } = shown!;
  if (!nudge) return el("p", { class: "spoken" }, stuckSaid);
  return el(
    "dl",
    { class: "grades" },
    grade("where to look", nudge.where),
    grade("what to use", far >= 2 ? nudge.use : gradeButton(app, "Tell me more")),
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

const wrongElement = (app: App, wrong: number): HTMLElement | undefined =>
  wrong === 0
    ? undefined
    : el(
        "p",
        { class: "wrong" },
        `${wrongSaid(wrong)} `,
        actButton(app, "check", { class: "link", label: "Look at that first" }),
      );

const nudgePanel = (app: App, state: State, light: Light): readonly Child[] => {
  const { nudge, asking } = state;
  const removesOnly =
    nudge?.grade === 3 && nudge.nudge?.line.steps.every(({ places }) => Object.keys(places).length === 0);
  return [
    heading("A nudge from where you are"),
    unable(state),
    asking ? thinking(app) : undefined,
    nudge ? wrongElement(app, nudge.wrong) : undefined,
    nudge ? gradesElement(app, state, light) : undefined,
    buttons(
      removesOnly ? actButton(app, "nudge", { class: "button", label: "And then?" }) : undefined,
      actButton(app, "check", { class: "button" }),
      back(app),
    ),
  ];
};

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
    ? el("p", { class: "aside" }, `It takes ${steps} steps from here. The last of them:`)
    : undefined;
};

const whyPanel = (app: App, state: State, light: Light): readonly Child[] => {
  const { why, asking } = state;
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
    buttons(back(app)),
  ];
};

const checkPanel = (app: App, state: State): readonly Child[] => {
  const { check, asking } = state;
  const isOdd = (check?.wrong.length ?? 0) > 0;
  return [
    heading(check ? checkSaid(check) : "Check my cells"),
    unable(state),
    asking ? thinking(app) : undefined,
    isOdd && !check?.where ? actButton(app, "where", { class: "button" }) : undefined,
    check?.where ? el("p", { class: "spoken" }, whereSaid(check.wrong.length)) : undefined,
    buttons(back(app)),
  ];
};

const walkthrough = ({ plan }: State): HTMLElement | undefined =>
  plan &&
  el(
    "details",
    { class: "walkthrough" },
    el("summary", { "data-focus": "walkthrough" }, "How the show goes through it"),
    ...plan.acts.map(({ title, beats }) =>
      el("div", {}, el("h3", {}, title), el("ol", {}, ...beats.map(({ placed }) => el("li", {}, curly(placed))))),
    ),
  );

const finishPanel = (app: App, state: State): readonly Child[] => [
  heading("That was the last one."),
  el("p", { class: "spoken" }, "Every digit is in its place."),
  state.settings.timed
    ? el("p", { class: "spoken time" }, `It took you ${spanSaid(state.finished ?? 0)}.`)
    : actButton(app, "timed", { class: "link", label: "How long did it take?" }),
  walkthrough(state),
  buttons(actButton(app, "begin-again", { class: "button" }), back(app)),
];

const idlePanel = (app: App): readonly Child[] => [
  buttons(
    actButton(app, "nudge", { class: "button main" }),
    actButton(app, "why", { class: "button" }),
    actButton(app, "check", { class: "button" }),
  ),
];

const panels: Readonly<Record<Panel, (app: App, state: State, light: Light) => readonly Child[]>> = {
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
    refill(element, ...(state.panel ? panels[state.panel](app, state, light) : idlePanel(app)));
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
