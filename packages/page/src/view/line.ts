import type { Part } from "@solvewright/engine";
import type { LetteredReason } from "@solvewright/press";
import type { Told } from "../help/asks.ts";
import { curly } from "../words/curly.ts";
import { lettersIn } from "./drawn.ts";
import { type Child, el } from "./el.ts";

const letterFor = (letters: readonly LetteredReason[], { of }: Part): LetteredReason | undefined =>
  of && letters.find((reason) => JSON.stringify(reason.of) === JSON.stringify(of));

const badge = ({ letter, of }: LetteredReason): HTMLElement =>
  el("span", { class: `badge ${"rule" in of ? "of-rule" : "of-cell"}` }, letter);

/** Lights what a letter stands for on the board while its phrase is pointed at. */
type Light = (letter: string | undefined) => void;

const phrase = (part: Part, letters: readonly LetteredReason[], light: Light): Child => {
  const text = curly(part.text);
  if (part.role === "plain") return text;
  if (part.role === "so") return el("strong", { class: "so" }, text);
  const reason = letterFor(letters, part);
  const listens = { onpointerenter: () => light(reason?.letter), onpointerleave: () => light(undefined) };
  const words = text.trimEnd();
  const span = el("span", { class: "because", ...listens }, words, ...(reason ? [badge(reason)] : []));
  return el("span", {}, span, text.slice(words.length));
};

/** Lines as they are pointed at, with their letters; who can't see the board hears the places instead. */
export const lineElement = (lines: readonly Told[], light: Light): HTMLElement => {
  const letters = lettersIn(lines);
  return el(
    "div",
    { class: "line" },
    ...lines.flatMap(({ parts, placed }) => [
      el("p", { "aria-hidden": "true" }, ...parts.map((part) => phrase(part, letters, light))),
      el("p", { class: "heard" }, curly(placed)),
    ]),
  );
};
