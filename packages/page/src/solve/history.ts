import { apply, type Change, invert } from "./change.ts";
import type { Position } from "./position.ts";

/** What was done and can be undone, and what was undone and can be done again; without limit. */
export interface History {
  readonly position: Position;
  readonly done: readonly Change[];
  readonly undone: readonly Change[];
}

export const withChange = ({ position, done }: History, change: Change): History => ({
  position: apply(change, position),
  done: [...done, change],
  undone: [],
});

export const withUndo = (history: History): History => {
  const change = history.done.at(-1);
  if (!change) return history;
  const { position, done, undone } = history;
  return { position: apply(invert(change), position), done: done.slice(0, -1), undone: [...undone, change] };
};

export const withRedo = (history: History): History => {
  const change = history.undone.at(-1);
  if (!change) return history;
  const { position, done, undone } = history;
  return { position: apply(change, position), done: [...done, change], undone: undone.slice(0, -1) };
};
