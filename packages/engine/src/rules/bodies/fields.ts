import * as z from "zod/mini";
import { type Digits, listOf as digitsOf } from "../../board/digits.ts";
import { type Canvas, nameOf, type Place } from "../../puzzle/canvas.ts";
import type { Random } from "../../random.ts";
import { counted } from "../../speech/english/counts.ts";
import type { FaultInText, Ground, Turning } from "../body.ts";
import { shown } from "../shown.ts";
import { readPath, shareSide, touch, writePath } from "./path-text.ts";

/** One key of a body: how its value is read from the file, written back and turned. */
export interface Field<T> {
  readonly schema: z.ZodMiniType;
  read(value: unknown, canvas: Canvas): { readonly value?: T; readonly faults: readonly FaultInText[] };
  write(value: T): unknown;
  turn(value: T, turning: Turning): T;
  /** One by chance, undefined where it led nowhere; no such member where only a setter can say. */
  draw?(random: Random, ground: Ground): T | undefined;
  /** The key may be left out. */
  readonly optional?: true;
}

const wrong = (value: unknown, right: string): { faults: FaultInText[] } => ({
  faults: [{ read: shown(value), right }],
});
const unturned = <T>(value: T): T => value;

const cells = (count: number): string => `${counted(count)} ${count === 1 ? "cell" : "cells"}`;
const lengths = (least: number, most: number): string => {
  if (most === least) return cells(least);
  if (most === Number.POSITIVE_INFINITY) return `${cells(least)} or more`;
  return most === least + 1 ? `${counted(least)} or ${cells(most)}` : `${counted(least)} to ${cells(most)}`;
};

const besides = {
  side: { fits: shareSide, right: "a cell that shares a side with the one before" },
  corner: { fits: touch, right: "a cell that touches the one before, by side or corner" },
};
interface PathLimits {
  readonly least?: number;
  readonly most?: number;
  /** Each cell lies beside the one before, by side, or by side or corner. */
  readonly beside?: keyof typeof besides;
}

/** Paths that are drawn have so many cells at most, numbers are so large at most, and lists of digits so long. */
const mostDrawn = { cells: 6, number: 30, digits: 3 };

const fromTo = (random: Random, least: number, most: number): number => least + random.below(most - least + 1);

const inReadingOrder = (a: Place, b: Place): number => a.row - b.row || a.column - b.column;

/** Places each beside the one before, or, where that isn't asked for, one piece in reading order. */
const drawnPath = (random: Random, { canvas }: Ground, length: number, beside?: keyof typeof besides) => {
  const drawn = [random.pick(canvas.places)];
  while (drawn.length < length) {
    const from = beside ? drawn.at(-1)! : random.pick(drawn);
    const near = canvas.places.filter((place) => besides[beside ?? "side"].fits(from, place) && !drawn.includes(place));
    if (near.length === 0) return undefined;
    drawn.push(random.pick(near));
  }
  return beside ? drawn : drawn.sort(inReadingOrder);
};

const cell = String.raw`r\d+c\d+(-r\d+c\d+)?`;

/** Cells in the order of the text, each once. */
export const path = ({
  least = 1,
  most = Number.POSITIVE_INFINITY,
  beside,
}: PathLimits = {}): Field<readonly Place[]> => ({
  schema: z.string().check(z.regex(new RegExp(`^\\s*${cell}(\\s+${cell})*\\s*$`))),
  read: (value, canvas) => {
    if (typeof value !== "string") return wrong(value, "cells separated by spaces, such as r1c1 r1c2");
    const { places, tokens, faults } = readPath(value, canvas);
    if (faults.length > 0) return { faults };
    if (places.length < least || places.length > most) return wrong(value, lengths(least, most));
    const gap = beside ? places.findIndex((place, k) => k > 0 && !besides[beside].fits(places[k - 1]!, place)) : -1;
    if (gap < 0) return { value: places, faults };
    const read = `${nameOf(places[gap]!)} after ${nameOf(places[gap - 1]!)}`;
    return { faults: [{ read, right: besides[beside!].right, offset: tokens[gap]!.offset }] };
  },
  write: writePath,
  turn: (places, turning) => places.map(turning.place),
  draw: (random, ground) =>
    drawnPath(random, ground, fromTo(random, least, Math.min(most, Math.max(least, mostDrawn.cells))), beside),
});

/** One cell. */
export const place = (): Field<Place> => {
  const one = path({ most: 1 });
  return {
    schema: one.schema,
    read: (value, canvas) => {
      const { value: places, faults } = one.read(value, canvas);
      return places ? { value: places[0]!, faults } : { faults };
    },
    write: nameOf,
    turn: (value, turning) => turning.place(value),
    draw: (random, { canvas }) => random.pick(canvas.places),
  };
};

const anyWhole = 1_000_000;

/** A whole number, from 0 to a million where not said. */
export const whole = ({ least = 0, most = anyWhole } = {}): Field<number> => ({
  schema: z.int().check(z.minimum(least), z.maximum(most)),
  read: (value) =>
    Number.isInteger(value) && (value as number) >= least && (value as number) <= most
      ? { value: value as number, faults: [] }
      : wrong(value, `a whole number, ${most < anyWhole ? `${least} to ${most}` : `${least} or more`}`),
  write: unturned,
  turn: unturned,
  draw: (random) => fromTo(random, least, Math.min(most, Math.max(least, mostDrawn.number))),
});

interface DigitLimits {
  readonly most?: number;
  /** None comes twice. */
  readonly distinct?: boolean;
}
interface DigitToken {
  readonly digit: number | undefined;
  readonly read: string;
  readonly place: Pick<FaultInText, "at" | "offset">;
}

const digitOf = (value: unknown): number | undefined => {
  const digit = typeof value === "string" && /^\d{1,2}$/.test(value) ? Number(value) : value;
  return Number.isInteger(digit) && (digit as number) >= 0 && (digit as number) <= 31 ? (digit as number) : undefined;
};
const digitTokens = (value: unknown): DigitToken[] =>
  Array.isArray(value)
    ? value.map((item, k) => ({ digit: digitOf(item), read: shown(item), place: { at: [k] } }))
    : [...String(value ?? "").matchAll(/\S+/g)].map(({ 0: token, index }) => ({
        digit: digitOf(token),
        read: shown(token),
        place: { offset: index },
      }));

/** Digits as a list or separated by spaces (`12` is twelve); each as often as it is named. */
export const digits = ({
  most = Number.POSITIVE_INFINITY,
  distinct = false,
}: DigitLimits = {}): Field<readonly number[]> => ({
  schema: z.union([z.array(z.int().check(z.minimum(0), z.maximum(31))), z.string(), z.int()]),
  read: (value) => {
    const tokens = digitTokens(value);
    if (tokens.length === 0) return wrong(value, "digits, such as 2 5 8 or [2, 5, 8]");
    const strange = tokens.filter(({ digit }) => digit === undefined).slice(0, 32);
    if (strange.length > 0)
      return { faults: strange.map(({ read, place }) => ({ ...place, read, right: "a digit from 0 to 31" })) };
    if (tokens.length > most) return wrong(value, `${counted(most)} digits at most`);
    const twice = tokens.find(({ digit }, k) => distinct && tokens.findIndex((other) => other.digit === digit) < k);
    if (twice)
      return { faults: [{ ...twice.place, read: twice.read, right: `each digit once; ${twice.digit} comes twice` }] };
    return { value: tokens.map(({ digit }) => digit!), faults: [] };
  },
  write: (list) => (list.length === 1 ? list[0] : list.join(" ")),
  turn: unturned,
  draw: (random, { domains }) => {
    const held = digitsOf(domains.reduce((all, some) => (all | some) as Digits));
    const drawn = Array.from({ length: fromTo(random, 1, Math.min(most, mostDrawn.digits)) }, () => random.pick(held));
    return (distinct ? [...new Set(drawn)] : drawn).sort((a, b) => a - b);
  },
});

/** One of these words. */
export const word = <W extends string>(...words: readonly W[]): Field<W> => ({
  schema: z.enum(words as readonly [W, ...W[]]),
  read: (value) =>
    words.includes(value as W) ? { value: value as W, faults: [] } : wrong(value, `one of ${words.join(", ")}`),
  write: unturned,
  turn: unturned,
  draw: (random) => random.pick(words),
});

/** Any text without control characters, at most `most` characters. */
export const text = (right: string, most = 2000): Field<string> => ({
  schema: z.string().check(z.maxLength(most)),
  read: (value) => (typeof value === "string" && value.length <= most ? { value, faults: [] } : wrong(value, right)),
  write: unturned,
  turn: unturned,
});

const colour: Field<string> = {
  schema: z.string().check(z.regex(/^#[0-9a-fA-F]{6}$/)),
  read: (value) =>
    typeof value === "string" && /^#[0-9a-fA-F]{6}$/.test(value)
      ? { value, faults: [] }
      : wrong(value, 'a colour such as "#7a9e5b", in quotes'),
  write: unturned,
  turn: unturned,
};

/** A list of whatever the field is, at least `least` long; `of` says what is listed. */
export const listOf = <T>(field: Field<T>, of: string, least = 1): Field<readonly T[]> => ({
  schema: z.array(field.schema).check(z.minLength(least)),
  read: (value, canvas) => {
    if (!Array.isArray(value) || value.length < least)
      return wrong(value, `a list of ${of}, ${counted(least)} or more`);
    const read = value.map((item) => field.read(item, canvas));
    const faults = read.flatMap((item, k) => item.faults.map((fault) => ({ ...fault, at: [k, ...(fault.at ?? [])] })));
    return faults.length > 0 ? { faults } : { value: read.map((item) => item.value!), faults };
  },
  write: (list) => list.map(field.write),
  turn: (list, turning) => list.map((item) => field.turn(item, turning)),
});

export const optional = <T>(field: Field<T>): Field<T> & { readonly optional: true } => ({ ...field, optional: true });

/** What every body may carry. */
export const common = { tint: optional(colour), note: optional(text("a note")) };
