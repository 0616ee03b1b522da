import type { Asked, Entry, State } from "../app/state.ts";
import type { History } from "../solve/history.ts";

/** What is kept of one puzzle on the device. */
export interface Progress extends History {
  readonly title: string;
  readonly log: readonly Entry[];
  readonly asked: readonly Asked[];
  readonly taken: State["taken"];
  /** Milliseconds of solving so far, and when it began and ended in these. */
  readonly spent: number;
  readonly began: number;
  readonly finished?: number;
  /** When it was kept, in milliseconds since 1970: the later of two wins. */
  readonly savedAt: number;
}

export const progressOf = (state: State, title: string, spent: number, savedAt: number): Progress => {
  const { position, done, undone, log, asked, taken, began, finished } = state;
  return {
    position,
    done,
    undone,
    title,
    log,
    asked,
    taken,
    spent,
    began,
    ...(finished === undefined ? {} : { finished }),
    savedAt,
  };
};

export const withProgress = (state: State, progress: Progress): State => {
  const { position, done, undone, log, asked, taken, began, finished } = progress;
  return {
    ...state,
    position,
    done,
    undone,
    log,
    asked,
    taken,
    began,
    ...(finished === undefined ? {} : { finished, panel: "finish" }),
  };
};
