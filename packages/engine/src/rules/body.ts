import type * as z from "zod/mini";
import type { Canvas, Place } from "../puzzle/canvas.ts";
import type { Random } from "../random.ts";
import type { Body, Fault, Setting } from "./contract.ts";

/** What a body is drawn on by chance: the cells of one grid from r1c1 on, and the digits that they may hold. */
export type Ground = Pick<Setting, "canvas" | "domains">;

/** A turn or a mirroring of the whole canvas, as what it does to what a body may name. */
export interface Turning {
  place(place: Place): Place;
  /** The line after the turn. */
  line(line: GridLine): GridLine;
  /** Which main diagonal of a grid that one becomes. */
  diagonal(which: "down" | "up" | "both"): "down" | "up" | "both";
}

export type Side = "left" | "right" | "top" | "bottom";
export interface GridLine {
  /** Its grid's id; where left out, the only grid that has such a line. */
  readonly grid?: string;
  readonly axis: "row" | "column";
  /** Counted in its grid, from 1. */
  readonly number: number;
  readonly from?: Side;
}

/**
 * The shape of a body, shared by many kinds: how it is read from the file and written back, turned and mirrored.
 * `read` takes what stands behind `kind:` (text, list or keys as YAML gives them) and gives an entry for each
 * instance in it: the body, or what is wrong with it; `at` in a fault leads on from the instance.
 */
export interface BodyShape<B extends Body> {
  readonly name: string;
  /** One sentence and examples for docs/format.md: "A path of cells, or a list of them, or { cells, by }". */
  readonly form: string;
  /** The kind's name alone is a rule. */
  readonly mayBeEmpty?: boolean;
  /** The schema of what may stand behind the kind's name, from which the published JSON Schema is made. */
  readonly schema: z.ZodMiniType;
  read(value: unknown, canvas: Canvas): readonly ReadBody<B>[];
  /** The shortest file form of one body: what `read` would read back as it. */
  write(body: B): unknown;
  turn(body: B, turning: Turning): B;
  /** One by chance, undefined where it led nowhere; no such member where only a setter can say what stands in it. */
  draw?(random: Random, ground: Ground): B | undefined;
  /** What is read all the same but deserves a second look. */
  remarks?(body: B, setting: Pick<Setting, "canvas" | "grids">): readonly Fault[];
  /** How it is drawn by hand. */
  readonly gesture: "drag" | "edge" | "sweep" | "corner" | "margin" | "none" | "points";
}

export interface ReadBody<B> {
  /** Where this instance stands in the value: [] or a list index. */
  readonly at: readonly (string | number)[];
  readonly body?: B;
  readonly faults: readonly FaultInText[];
}
/** `offset`: the place inside the text at `at`, in characters from 0. `atKey`: the key that `at` ends in, not its value. */
export type FaultInText = Fault & { readonly offset?: number; readonly atKey?: true };
