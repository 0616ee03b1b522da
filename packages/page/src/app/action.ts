import type { Moment } from "./commit.ts";
import type { State } from "./state.ts";

/** What the page around the state has to do once an action has run. */
export type Effect = "print" | "save" | "open" | "to-board" | "to-panel";

/** Something that the solver can do: one list, read by keys, strip, links, help and tests. */
export interface Action {
  readonly id: string;
  label(state: State, moment: Moment): string;
  /** "ArrowLeft", "Shift+ArrowLeft", "Mod+z" (Ctrl, or Command on a Mac), "r"; heard on the board only. */
  readonly keys: readonly string[];
  when(state: State, moment: Moment): boolean;
  run(state: State, moment: Moment): State;
  readonly effect?: Effect;
}

const always = (): boolean => true;

type Plain = Omit<Action, "label" | "keys" | "when"> & {
  readonly label: string | Action["label"];
  readonly keys?: readonly string[];
  readonly when?: Action["when"];
};

export const action = ({ label, keys = [], when = always, ...rest }: Plain): Action => ({
  ...rest,
  label: typeof label === "string" ? () => label : label,
  keys,
  when,
});
