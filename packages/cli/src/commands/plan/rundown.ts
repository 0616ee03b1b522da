import { type Board, counted, listed, type Plan, type PlanAct, type PlanBeat } from "@solvewright/engine";
import { clock, entriesOf, oneLine, timesOf } from "@solvewright/press";
import type { Output } from "../../command.ts";
import { printable } from "../../printable.ts";
import { wrapped } from "../../wrapped.ts";

type Paper = Pick<Output, "colours" | "width">;

const margin = "      ";
const widest = 88;

export const paragraph = (text: string, { width }: Paper): string[] =>
  wrapped(printable(oneLine(text)), Math.min(width, widest), margin);

const seconds = (time: number): string => `${Math.round(time)} s`;

export const row = (n: number, name: string, about: string, { colours }: Paper): string =>
  `${String(n).padStart(4)}  ${colours.bold(printable(oneLine(name)))}  ${colours.dim(about)}`;

const heading = (title: string, start: number, { colours }: Paper): string =>
  `${colours.bold(printable(oneLine(title)).toUpperCase())}  ${colours.dim(clock(start))}`;

/** The hardest of a beat's steps. */
const levelOf = ({ steps }: Plan, beat: PlanBeat): number =>
  Math.max(...steps.filter(({ n }) => beat.steps.includes(n)).map(({ level }) => level));

const beatLines = (beat: PlanBeat, plan: Plan, board: Board, paper: Paper): string[] => {
  const { enter, mark } = entriesOf({ board, plan }, beat);
  const entries = [...(enter.length > 0 ? [`Enter ${listed(enter)}.`] : []), ...mark.map((text) => `Mark ${text}.`)];
  return [
    row(beat.n, beat.name, `level ${levelOf(plan, beat)}, ${seconds(beat.seconds)}`, paper),
    ...(beat.pause ? paragraph(beat.pause.say, paper) : []),
    ...paragraph(beat.say, paper),
    ...entries.flatMap((text) => paragraph(text, paper)).map(paper.colours.dim),
  ];
};

const actLines = (act: PlanAct, start: number, plan: Plan, board: Board, paper: Paper): string[] => [
  "",
  heading(act.title, start, paper),
  ...paragraph(act.open, paper),
  ...act.beats.flatMap((beat) => ["", ...beatLines(beat, plan, board, paper)]),
  "",
  ...paragraph(act.close, paper),
];

const ruleLines = ({ rules }: Plan, paper: Paper): string[] => [
  "",
  heading("The rules", 0, paper),
  ...rules.lines.flatMap(({ n, title, say, seconds: long }) => [
    row(n, title, seconds(long), paper),
    ...paragraph(say, paper),
  ]),
];

const summary = ({ acts, rules, level, seconds: all }: Plan): string => {
  const beats = acts.reduce((sum, act) => sum + act.beats.length, 0);
  return `${clock(all)} in all: the rules ${clock(rules.seconds)}, then ${counted(beats)} ${beats === 1 ? "beat" : "beats"} up to level ${level}.`;
};

const leftOutSaid = ({ leftOut }: Plan): string[] =>
  leftOut.length === 0 ? [] : [`It leaves out ${listed(leftOut)}, which the file only describes.`];

/** Why wishes are not fulfilled, a line each. */
const unmetSaid = ({ unmet }: Plan, paper: Paper): string[] =>
  unmet.map(({ wish, why }) => `${paper.colours.bold(`Not as wished (${wish.wish}):`)} ${printable(oneLine(why))}`);

/** A running order in plain words, act by act. */
export const rundown = (plan: Plan, board: Board, paper: Paper): string[] => {
  const [, ...acts] = timesOf(plan).acts;
  return [
    printable(oneLine(board.puzzle.title)),
    summary(plan),
    ...leftOutSaid(plan),
    ...unmetSaid(plan, paper),
    ...ruleLines(plan, paper),
    ...plan.acts.flatMap((act, k) => actLines(act, acts[k]!.from, plan, board, paper)),
  ];
};

/** How far a running order comes that does not reach the end. */
export const howFar = ({ steps }: Plan, { canvas, givens }: Board, level: number): string => {
  const open = canvas.names.length - givens.size;
  const placed = steps.reduce((sum, { places }) => sum + Object.keys(places).length, 0);
  const left = open - placed;
  const far = placed === 0 ? "to no digit at all" : `to ${counted(placed)} of ${counted(open)} digits`;
  return `Level ${level} comes ${far} and no further; ${counted(left)} ${left === 1 ? "cell is" : "cells are"} still open.`;
};
