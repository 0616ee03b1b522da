import type { Plan } from "@solvewright/engine";
import type { Ask, Nudge, Reply } from "../help/asks.ts";
import type { Change } from "../solve/change.ts";
import type { SpotShape } from "../solve/entry.ts";
import type { Ground } from "../solve/ground.ts";
import type { History } from "../solve/history.ts";
import { nothing } from "../solve/position.ts";

/** What is open beside the board. */
export type Panel = "nudge" | "why" | "check" | "rules" | "finish";

export interface Settings {
  /** Marks that a settled digit strikes clear themselves. */
  readonly clears: boolean;
  /** The time taken is told at the end. */
  readonly timed: boolean;
  readonly theme: "device" | "light" | "dark";
  /** The strip of digits is shown wherever one solves, not on touch alone. */
  readonly strip: boolean;
}

const usual: Settings = { clears: true, timed: false, theme: "device", strip: false };

/** What was done and when, in milliseconds of solving since the start. */
export interface Entry {
  readonly at: number;
  readonly did: string;
  readonly change: Change;
}

/** What help was asked for and when. */
export interface Asked {
  readonly at: number;
  readonly asked: "nudge" | "why" | "check";
  readonly grade?: Grade;
  readonly cell?: string;
  readonly digit?: number;
}

export type Grade = 1 | 2 | 3;

export interface NudgeShown {
  readonly wrong: number;
  readonly nudge?: Nudge;
  readonly grade: Grade;
}

export interface WhyShown {
  readonly digit?: number;
  readonly answer?: Extract<Reply, { reply: "why" }>;
}

export interface CheckShown extends Omit<Extract<Reply, { reply: "check" }>, "reply"> {
  readonly where: boolean;
}

/** Everything that can change on the page. */
export interface State extends History {
  /** The cell that the keys start from, and all that are chosen. */
  readonly at: string;
  readonly chosen: readonly string[];
  /** What a digit is entered as; `stays` keeps it so after one digit. */
  readonly place: "cell" | SpotShape;
  readonly turn: number;
  readonly stays: boolean;
  /** A number that is being typed, where digits go above 9. */
  readonly typed: string;
  /** The grid that the lens holds, and whether its number is waited for. */
  readonly lens?: number;
  readonly waits: boolean;
  /** Each tap adds a cell. */
  readonly several: boolean;
  readonly zoom: number;
  readonly panel?: Panel;
  readonly nudge?: NudgeShown;
  readonly why?: WhyShown;
  readonly check?: CheckShown;
  /** Digits that told nudges took out, by cell. */
  readonly taken: Readonly<Record<string, readonly number[]>>;
  /** What the helper thinks about. */
  readonly asking?: Ask;
  /** `unsound`: it found no single solution to go by; `gone`: it could not be started. */
  readonly helper: "starting" | "ready" | "unsound" | "gone";
  readonly plan?: Plan;
  readonly log: readonly Entry[];
  readonly asked: readonly Asked[];
  /** When solving began (anew) and when the board was full and right, in milliseconds of solving. */
  readonly began: number;
  readonly finished?: number;
  readonly settings: Settings;
  readonly kept: "not yet" | "here" | "nowhere" | "full";
  /** What is announced; `n` tells the same words said twice apart. */
  readonly said: { readonly text: string; readonly n: number };
  /** A remark under the board, until the next act. */
  readonly remark: string;
}

export const stateFor = (ground: Ground): State => {
  const first = [...ground.cells.keys()][0]!;
  return {
    position: nothing,
    done: [],
    undone: [],
    at: first,
    chosen: [],
    place: "cell",
    turn: 0,
    stays: false,
    typed: "",
    waits: false,
    several: false,
    zoom: 1,
    taken: {},
    helper: "starting",
    log: [],
    asked: [],
    began: 0,
    settings: usual,
    kept: "not yet",
    said: { text: "", n: 0 },
    remark: "",
  };
};

export const saying = (state: State, text: string): State => ({ ...state, said: { text, n: state.said.n + 1 } });

/** The state without a key that may be left out. */
export const lacking = <K extends "lens" | "panel" | "nudge" | "why" | "check" | "asking" | "finished">(
  state: State,
  ...keys: readonly K[]
): State => {
  const next = { ...state };
  for (const key of keys) delete next[key];
  return next;
};
