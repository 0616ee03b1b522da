import type { App } from "../app/app.ts";
import { el, withAttributes } from "./el.ts";

interface Look {
  readonly class?: string;
  readonly label?: string;
  /** Stays pressed while this is so. */
  readonly pressed?: boolean;
  /** Said by screen readers where the label alone is too short. */
  readonly said?: string;
}

/** Brings a button up to the state: a finger that rests on it meets the same element. */
const refresh = (app: App, button: HTMLButtonElement, id: string, { label, pressed, said }: Look): void => {
  const action = app.action(id);
  const [state, moment] = [app.state(), app.moment()];
  withAttributes(button, {
    "aria-pressed": pressed === undefined ? undefined : String(pressed),
    "aria-disabled": action.when(state, moment) ? undefined : "true",
    "aria-label": said,
  });
  const text = label ?? action.label(state, moment);
  const shown = button.lastChild;
  if (shown?.textContent !== text) button.replaceChildren(...[...button.children], text);
};

/** A button for an action of the list; quiet while it can't be run. */
export const actButton = (app: App, id: string, look: Look = {}): HTMLButtonElement => {
  const button = el("button", {
    type: "button",
    class: look.class ?? "plain",
    "data-focus": id,
    "data-action": id,
    onclick: () => app.run(id),
  });
  refresh(app, button, id, look);
  return button;
};

/** The same, with how to bring it up to the state. */
export const lastingButton = (app: App, id: string, look: () => Look = () => ({})) => {
  const element = actButton(app, id, look());
  return { element, update: (): void => refresh(app, element, id, look()) };
};
