import { changeBetween } from "../solve/change.ts";
import type { Ground } from "../solve/ground.ts";
import { withChange } from "../solve/history.ts";
import { isSettled, type Position } from "../solve/position.ts";
import { lacking, type State, saying } from "./state.ts";

/** Constant while the page is open, and the time of solving in milliseconds. */
export interface Moment {
  readonly ground: Ground;
  readonly at: number;
}

const isFull = (ground: Ground, position: Position): boolean =>
  [...ground.cells.values()].every(({ name, given }) => given !== undefined || isSettled(position, name));

/** Help that the new board has left behind is closed: a nudge once its cells are settled, an answer, a check. */
export const withoutStale = (state: State): State => {
  const { nudge, panel, position, why } = state;
  const isTaken = nudge?.nudge?.cells.every((cell) => position.settled[cell] !== undefined) ?? false;
  let next = lacking(state, "check");
  if (isTaken) next = lacking(next, "nudge");
  if (why?.answer) next = { ...next, why: {} };
  const isOver = (panel === "nudge" && isTaken) || panel === "check" || panel === "finish";
  return isOver ? lacking(next, "panel") : next;
};

/** A full board is looked at by itself. */
const lookedAt = (state: State, { ground }: Moment): State =>
  isFull(ground, state.position) && state.helper === "ready"
    ? { ...state, asking: { ask: "check", position: state.position } }
    : state;

/** Makes the board so; nothing happens where it is so already. */
export const withPosition = (state: State, to: Position, did: string, text: string, moment: Moment): State => {
  const change = changeBetween(state.position, to);
  if (change.length === 0) return state;
  const log = [...state.log, { at: moment.at, did, change }];
  const next: State = { ...state, ...withChange(state, change), log, typed: "", remark: "" };
  return lookedAt(saying(withoutStale(lacking(next, "finished")), text), moment);
};
