import type { App } from "../app/app.ts";
import { el } from "./el.ts";

interface Look {
  readonly class?: string;
  readonly label?: string;
  /** Stays pressed while this is so. */
  readonly pressed?: boolean;
  /** Said by screen readers where the label alone is too short. */
  readonly said?: string;
}

/** A button for an action of the list; quiet while it can't be run. */
export const actButton = (app: App, id: string, look: Look = {}): HTMLButtonElement => {
  const { label, when } = app.action(id);
  const [state, moment] = [app.state(), app.moment()];
  return el(
    "button",
    {
      type: "button",
      class: look.class ?? "plain",
      "data-focus": id,
      "data-action": id,
      "aria-pressed": look.pressed === undefined ? undefined : String(look.pressed),
      "aria-disabled": when(state, moment) ? undefined : "true",
      "aria-label": look.said,
      onclick: () => app.run(id),
    },
    look.label ?? label(state, moment),
  );
};
