import { type Board, counted, fingerprint, type Soundness } from "@solvewright/engine";
import { pageDataOf } from "../../page/page-data-of.ts";
import { pageOf } from "../../page/page-of.ts";
import { creditOf } from "../credit.ts";
import type { Assets } from "../show.ts";
import { oneLine } from "../texts.ts";
import { type Correction, correctionsIn } from "./changes.ts";

/** A puzzle as it was published and as it is right. */
export interface Corrected {
  readonly was: Board;
  readonly now: Board;
  /** How many solutions it had as published. */
  readonly verdict: Soundness["verdict"];
  /** In how many cells the solution as published and the right one differ, where both have one. */
  readonly differ: number;
  /** What else was wrong, in the presenter's words. */
  readonly note?: string;
}

const isSamePuzzle = ({ was, now }: Corrected): boolean => fingerprint(was.puzzle) === fingerprint(now.puzzle);

const onSolution = (corrected: Corrected): string => {
  const { verdict, differ } = corrected;
  if (isSamePuzzle(corrected)) return "The puzzle itself is the same, and so is its solution.";
  if (verdict === "several") return "As published, the puzzle had more than one solution. Now it has exactly one.";
  if (verdict === "none") return "As published, the puzzle had no solution. Now it has exactly one.";
  if (differ === 0) return "The solution is the same as before.";
  return `The solution is another: it differs in ${counted(differ)} ${differ === 1 ? "cell" : "cells"}.`;
};

const onPage = (corrected: Corrected): string =>
  isSamePuzzle(corrected)
    ? "The page has been replaced at its old address. What you entered on it is still there."
    : "The page has been replaced at its old address. What you entered on it is still there, as far as it has a place in the right puzzle.";

const item = ({ published, right, brief }: Correction): string => {
  if (published === undefined) return brief ? `- Now: ${right}` : `- Left out: ${right}`;
  return right === undefined
    ? `- Not part of the puzzle: ${published}`
    : `- Right: ${right}\n  Published: ${published}`;
};

const noteOf = ({ note }: Corrected): string[] => (note ? [note.trim()] : []);

/** What was wrong, what is right, and what that means for who has begun. */
export const erratumText = (corrected: Corrected): string => {
  const { was, now } = corrected;
  const items = correctionsIn(was, now).map(item);
  return `${[
    `A correction to ${oneLine(now.puzzle.title) || "the puzzle"}, ${creditOf(now.puzzle)}`,
    ...noteOf(corrected),
    ...(items.length > 0 ? [items.join("\n\n")] : []),
    onSolution(corrected),
    onPage(corrected),
    "The mistake was ours. Thank you to everyone who told us.",
  ].join("\n\n")}\n`;
};

/** What a pinned comment may take before it is folded up, in characters. */
const most = 500;

const ended = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);

const said = ({ published, right, brief }: Correction): string => {
  if (brief !== undefined) return brief;
  if (right === undefined) return ended(`Not part of the puzzle: ${published}`);
  return ended(published === undefined ? `Left out: ${right}` : `Right is: ${right}`);
};

/** As many whole sentences as there is room for, the first always, cut short if need be. */
const fitting = (texts: readonly string[], room: number): string[] => {
  const kept: string[] = [];
  for (const text of texts) {
    const length = kept.reduce((sum, { length }) => sum + length + 1, 0);
    if (length + text.length > room) break;
    kept.push(text);
  }
  if (kept.length === 0 && texts.length > 0) return [`${[...texts[0]!].slice(0, room - 1).join("")}…`];
  return kept.length < texts.length ? [...kept, "And more: see the description."] : kept;
};

/** The short form, to be pinned under the video. */
export const pinnedText = (corrected: Corrected): string => {
  const { was, now } = corrected;
  const ending = `${onSolution(corrected)} ${onPage(corrected)}`;
  const texts = [...noteOf(corrected).map(ended), ...correctionsIn(was, now).map(said)].map(oneLine);
  const room = most - ending.length - 60;
  return `Correction: ${[...fitting(texts, room), ending].join(" ")}\n`;
};

/** The page that takes the place of the published one; it takes over what was kept there. */
export const correctedPage = (corrected: Corrected, { page }: Pick<Assets, "page">): string => {
  const { was, now } = corrected;
  const data = pageDataOf(now);
  return pageOf(page, isSamePuzzle(corrected) ? data : { ...data, formerly: fingerprint(was.puzzle) });
};
