import type { Ground } from "../solve/ground.ts";
import type { Action, Effect } from "./action.ts";
import { actionsFor } from "./actions.ts";
import type { Moment } from "./commit.ts";
import { type State, stateFor } from "./state.ts";

/** The page's one state, and the only way in which it changes. */
export interface App {
  readonly ground: Ground;
  readonly actions: readonly Action[];
  state(): State;
  moment(): Moment;
  update(change: (state: State, moment: Moment) => State): void;
  /** Runs an action by its id, where it can be run now. */
  run(id: string): void;
  action(id: string): Action;
  /** Called after every change, with the state before. */
  watch(watcher: (state: State, before: State) => void): void;
  onEffect(handler: (effect: Effect) => void): void;
}

/** `now`: milliseconds of solving. */
export const appFor = (ground: Ground, now: () => number): App => {
  const actions = actionsFor(ground);
  const byId = new Map(actions.map((action) => [action.id, action]));
  const watchers: ((state: State, before: State) => void)[] = [];
  const handlers: ((effect: Effect) => void)[] = [];
  let state = stateFor(ground);
  const moment = (): Moment => ({ ground, at: Math.round(now()) });
  const update: App["update"] = (change) => {
    const before = state;
    state = change(state, moment());
    if (state !== before) for (const watcher of watchers) watcher(state, before);
  };
  const action = (id: string): Action => {
    const found = byId.get(id);
    if (!found) throw new Error(`there is no action ${id}`);
    return found;
  };
  return {
    ground,
    actions,
    state: () => state,
    moment,
    update,
    action,
    run: (id) => {
      const { when, run, effect } = action(id);
      if (!when(state, moment())) return;
      update(run);
      if (effect) for (const handler of handlers) handler(effect);
    },
    watch: (watcher) => void watchers.push(watcher),
    onEffect: (handler) => void handlers.push(handler),
  };
};
