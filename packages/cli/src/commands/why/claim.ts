import { dirname } from "node:path";
import {
  type Board,
  claimOf,
  type Deduction,
  type Judged,
  judgeClaim,
  judgedLine,
  readClaim,
  type Said,
  type Step,
} from "@solvewright/engine";
import { boardSvg } from "@solvewright/press";
import { besleyCss } from "@solvewright/press/files";
import * as z from "zod/mini";
import type { Asked, ExitCode } from "../../command.ts";
import { badUsage } from "../../faults.ts";
import { watching } from "../../long-work.ts";
import { printable } from "../../printable.ts";
import type { ClaimForm } from "../../schemas/claim.ts";
import { watchedProver } from "../../show.ts";
import { toDisk } from "../../to-disk.ts";
import { writeWhole } from "../../write-whole.ts";
import { drawTo } from "./picture.ts";
import type { Start } from "./start.ts";

const lists = z._default(z.record(z.string(), z.array(z.number())), {});
const stepForm = z.object({
  places: z._default(z.record(z.string(), z.number()), {}),
  removes: lists,
  because: z._default(
    z.object({ facts: lists, houses: z._default(z.array(z.string()), []), rules: z._default(z.array(z.string()), []) }),
    { facts: {}, houses: [], rules: [] },
  ),
});

const unread = (read: string, right: string) =>
  badUsage(`${printable(read)} can't be read in this claim. Right: ${printable(right)}.`, { read, right });

/** A step of a running order in the words of the grammar. */
const inWords = (text: string): string => {
  let step: unknown;
  try {
    step = JSON.parse(text);
  } catch (error) {
    throw unread((error as Error).message, "a step as JSON, or words");
  }
  const { success, data } = stepForm.safeParse(step);
  if (!success) throw unread("this step", "places or removes, and because with facts, houses and rules");
  const { places, removes, because } = data;
  const said = [
    ...Object.entries(places).map(([cell, digit]) => `${cell}=${digit}`),
    ...Object.entries(removes).map(([cell, digits]) => `${cell}<>${digits.join(" ")}`),
  ];
  const facts = Object.entries(because.facts).map(([cell, digits]) => `${cell} in ${digits.join(" ")}`);
  const why = [...because.houses, ...because.rules, ...facts];
  return `${said.join(", ")}${why.length > 0 ? ` because ${why.join(", ")}` : ""}`;
};

/** The deduction that a flag tells, in words or as a step in JSON. */
export const saidIn = (flag: string, board: Board): Said => {
  const read = readClaim(flag.trim().startsWith("{") ? inWords(flag) : flag, board);
  if ("read" in read) throw unread(read.read, read.right);
  return read;
};

const stepOf = (board: Board, deduction: Deduction, say: string): Step => ({
  n: 1,
  technique: "claimed",
  level: 1,
  ...claimOf(board, deduction),
  say,
  seconds: 0,
});

const formOf = (board: Board, { wrong }: Start, judged: Judged, say: string): ClaimForm => ({
  verdict: judged.verdict,
  wrong: [...wrong],
  ...("step" in judged ? { step: { ...stepOf(board, judged.step, say), technique: "claimed" } } : {}),
  missing: judged.verdict === "missing" ? [...judged.missing] : [],
  unshown: judged.verdict === "missing" ? judged.unshown.map((cell) => board.canvas.names[cell]!) : [],
  spare: judged.verdict === "sound" ? [...judged.spare] : [],
  ...(judged.verdict === "unsound" && judged.counterexample ? { counterexample: { ...judged.counterexample } } : {}),
  say,
});

/** The digits that obey what was named, with the cells that come out otherwise than concluded marked. */
const drawCounterexample = (file: string, board: Board, said: Said, found: Readonly<Record<string, number>>) => {
  const differ = [...said.places.keys(), ...said.removes.keys()].map((cell) => board.canvas.names[cell]!);
  const givens = Object.fromEntries([...board.givens].map(([cell, digit]) => [board.canvas.names[cell]!, digit]));
  const written = { settled: { ...givens, ...found } };
  const svg = boardSvg(board, { fontCss: besleyCss(), painted: true, written, differ });
  return toDisk(dirname(file), () => writeWhole(file, svg));
};

/** Judges a deduction from a board and tells what comes of it. Throws `Stopped`. */
export const judgedFrom = (board: Board, said: Said, { known }: Start, asked: Asked): Judged =>
  judgeClaim(
    board,
    known,
    said,
    watchedProver(
      board,
      watching(asked, () => asked.out.progress("Judging the claim")),
    ),
  );

export const tellJudged = async (
  board: Board,
  said: Said,
  start: Start,
  judged: Judged,
  { out, flags }: Asked,
  before: readonly string[],
): Promise<ExitCode> => {
  const say = [...before, judgedLine(board, said, judged)].join(" ");
  if (flags.json) out.json(formOf(board, start, judged, say));
  else out.line(printable(say));
  if (typeof flags.picture === "string") {
    if ("step" in judged) await drawTo(flags.picture, board, start.known, [stepOf(board, judged.step, say)]);
    else if (judged.verdict === "unsound" && judged.counterexample)
      await drawCounterexample(flags.picture, board, said, judged.counterexample);
  }
  return judged.verdict === "sound" ? 0 : 1;
};
