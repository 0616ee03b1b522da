import type { Part } from "@solvewright/engine";
import { beside, paragraph, type Row, ruled, space, stacked } from "../../paper/block.ts";
import { columnsOf } from "../../paper/columns.ts";
import { pageSvg } from "../../paper/page-svg.ts";
import { either, margin } from "../../paper/paper.ts";
import { type Run, runWidth, type Style } from "../../paper/typeset.ts";
import { masthead } from "../sheet/masthead.ts";
import { heading, styles } from "../sheet/styles.ts";
import type { Show } from "../show.ts";
import { oneLine } from "../texts.ts";
import { lengthOf, type ToldAct, type ToldBeat, toldActs } from "./told-acts.ts";

const width = either.width - 2 * margin;
const lineWidth = width * 0.63;
const doingFrom = width * 0.69;
const doingWidth = width - doingFrom;
const footHeight = 20;
const room = either.height - 2 * margin - footHeight;

const line: Style = { face: "voice", weight: 500, size: 14, fill: "ink" };
const follows: Style = { ...line, weight: 700, fill: "so-text" };
const quiet: Style = { ...styles.foot, size: 9, fill: "ink-2" };
const doing: Style = { ...styles.text, size: 11 };
const verb: Style = { ...styles.strong, size: 11 };

/** "a 6" stays on one line. */
const unparted = (text: string): string => text.replace(/\b(an?) (?=\d)/g, "$1\u00a0");

/** A sign that belongs to the word before it is not set apart from it by the change of style. */
const spoken = (parts: readonly Part[]): Run[] => {
  const runs: Run[] = [];
  for (const { text, role } of parts) {
    const style = role === "so" ? follows : line;
    const [, sign = "", rest = ""] = /^([.,;:!?]*)(.*)$/su.exec(unparted(text))!;
    const last = runs.at(-1);
    if (sign && last) runs[runs.length - 1] = { ...last, text: last.text + sign };
    else if (sign) runs.push({ text: sign, style });
    if (rest.trim() !== "") runs.push({ text: rest, style });
  }
  return runs;
};

const entryRow = (runs: readonly Run[]): Row[] => [...paragraph(runs, doingWidth, 1.35), space(3)];

const entryRows = ({ entries: { grid, enter, mark } }: ToldBeat): Row[] => {
  const entries = [...enter.map((text) => ["Enter", text] as const), ...mark.map((text) => ["Mark", text] as const)];
  return [
    ...(grid ? entryRow([{ text: `In ${grid}`, style: doing }]) : []),
    ...entries.flatMap(([what, text]) =>
      entryRow([
        { text: what, style: verb },
        { text, style: doing },
      ]),
    ),
  ];
};

const lineRows = ({ n, name, at, seconds, pause, parts }: ToldBeat): Row[] => [
  ...paragraph([{ text: `${n}. ${oneLine(name)} · ${at}, ${seconds} s`, style: quiet }], lineWidth, 1.6),
  ...(pause ? paragraph([{ text: pause, style: { ...line, fill: "ink-2" } }], lineWidth, 1.36) : []),
  ...paragraph(spoken(parts), lineWidth, 1.36),
];

/** A line and what is entered beside it, never parted unless it is longer than a page. */
const beatRows = (beat: ToldBeat): Row[] => {
  const [left, right] = [lineRows(beat), [space(quiet.size * 1.6), ...entryRows(beat)]];
  const together = beside([
    { x: 0, rows: left },
    { x: doingFrom, rows: right },
  ]);
  const rows = together.height <= room ? [together] : [...left, ...right];
  return [...rows, ruled(width, 8, 8)];
};

const said = (text: string | undefined): Row[] =>
  text ? [...paragraph([{ text, style: line }], lineWidth, 1.36), ruled(width, 8, 8)] : [];

const actRows = ({ title, open, close, beats }: ToldAct, k: number): Row[] => [
  ...(k > 0 ? [space(14)] : []),
  ...paragraph([{ text: oneLine(title), style: heading(18, 600) }], width, 1.3).map((row) => ({
    ...row,
    keepsWithNext: true,
  })),
  { ...ruled(width, 4, 8, true), keepsWithNext: true },
  ...said(open).map((row) => ({ ...row, keepsWithNext: true })),
  ...beats.flatMap(beatRows),
  ...said(close),
];

/** Title and page number at the foot of a page. */
const numbered = (title: string, page: number, of: number): string => {
  const number: Run = { text: `${page} of ${of}`, style: styles.foot };
  const name: Run = { text: oneLine(title).slice(0, 80), style: styles.foot };
  const top = either.height - margin - footHeight + 8;
  const at = (run: Run, x: number): string => stacked(paragraph([run], width + 1).slice(0, 1), x, top);
  return `${at(name, margin)}\n${at(number, margin + width - runWidth(number))}`;
};

/** The script for paper, in large type and two columns: the line; what to enter and mark. */
export const scriptPages = (show: Show): string[] => {
  const { puzzle } = show.board;
  const key: Run[] = [
    { text: "What follows", style: { ...quiet, weight: 600 } },
    {
      text: "is set bold. Places are named row and column, each grid counting its own from the top left.",
      style: quiet,
    },
  ];
  const rows = [
    ...masthead(puzzle, width, { after: "the script", ...(show.isChanged ? { isChanged: true } : {}) }),
    ...paragraph([{ text: lengthOf(show), style: doing }], width),
    ...paragraph(key, width, 1.5),
    space(16),
    ...toldActs(show).flatMap(actRows),
  ];
  const pages = columnsOf(rows, [room]);
  return pages.map((page, k) =>
    pageSvg(either, [stacked(page, margin, margin), numbered(puzzle.title, k + 1, pages.length)]),
  );
};
