import type { Board } from "@solvewright/engine";
import { missingIn, rulesOf } from "../../page/page-data-of.ts";
import { paragraph, type Row, space } from "../../paper/block.ts";
import type { Run, Style } from "../../paper/typeset.ts";
import { oneLine } from "../texts.ts";
import { styles } from "./styles.ts";

export interface Measure {
  /** In points. */
  readonly width: number;
  readonly scale: number;
}

/** How large the rules may be set, as shares of their least size. */
export const ruleScales = [1.25, 1.1, 1] as const;

const scaled = (style: Style, scale: number): Style => ({ ...style, size: style.size * scale });

/** A rule of no more lines than this is not parted between columns. */
const mostTogether = 6;

const together = (rows: readonly Row[]): Row[] =>
  rows.map((row, k) => (k < rows.length - 1 ? { ...row, keepsWithNext: true } : row));

const rule = (title: string, says: readonly string[], { width, scale }: Measure): Row[] => {
  const [lead, plain] = [scaled(styles.lead, scale), scaled(styles.text, scale)];
  const texts = says.map((text, k): Run => ({ text: oneLine(text), style: plain, before: k === 0 ? 4 : 0 }));
  const rows = paragraph([{ text: oneLine(title), style: lead }, ...texts], width);
  return [...(rows.length > mostTogether ? rows : together(rows)), space(6 * scale)];
};

/** The rules for paper: the name of each, then its sentence; what missing marks mean; what the setter adds. */
export const rulesRows = (board: Board, measure: Measure): Row[] => {
  const missing = missingIn(board);
  const { notes } = board.puzzle;
  return [
    ...rulesOf(board).flatMap(({ title, say, notes: added }) => rule(title, [say, ...added], measure)),
    ...(missing.length > 0 ? rule("No mark", missing, measure) : []),
    ...(notes ? rule("The setter adds", notes.trim().split("\n"), measure) : []),
  ];
};
