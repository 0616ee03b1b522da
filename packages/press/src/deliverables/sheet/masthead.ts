import type { Puzzle } from "@solvewright/engine";
import { heightOf, paragraph, type Row, space } from "../../paper/block.ts";
import { type Run, runWidth, setLines } from "../../paper/typeset.ts";
import { byWords } from "../credit.ts";
import { oneLine } from "../texts.ts";
import { heading, styles } from "./styles.ts";

/** Sizes of a title, from that of a short one to that of a very long one; lines that it may take. */
const sizes = [29, 24, 20, 16];
const mostLines = 3;

/** A title as large as it can be in three lines; what is longer still is cut short. */
const titleRuns = (title: string, width: number): Run => {
  const text = oneLine(title) || "Untitled";
  for (const size of sizes) {
    const run = { text, style: heading(size) };
    if (setLines([run], width).length <= (size > 24 ? 1 : mostLines)) return run;
  }
  const run = { text: text.slice(0, 400), style: heading(sizes.at(-1)!) };
  const [first, second, third] = setLines([run], width - 20).map((line) => line.map((part) => part.text).join(" "));
  return { ...run, text: `${first} ${second} ${third}…` };
};

/** "by Maud Ferrier and Ivo Lang", each name a link where there is one. */
export const creditRuns = ({ setters }: Puzzle, isChanged = false): Run[] => {
  const style = styles.credit;
  if (setters.length === 0) return [{ text: "setter not named yet", style }];
  return setters.flatMap(({ name, link }, k): Run[] => {
    const before = k === 0 ? byWords(isChanged) : k === setters.length - 1 ? "and" : "";
    const text = oneLine(name).slice(0, 200) + (k < setters.length - 2 ? "," : "");
    return [...(before ? [{ text: before, style }] : []), { text, style, ...(link ? { link } : {}) }];
  });
};

export interface Heading {
  /** Stands behind the title: "the solution". */
  readonly after?: string;
  /** The puzzle is not letter by letter as its setter made it. */
  readonly isChanged?: boolean;
}

/** Title and credit: on one line where there is room, else the credit under the title. */
export const masthead = (puzzle: Puzzle, width: number, { after = "", isChanged = false }: Heading = {}): Row[] => {
  const title = titleRuns(after ? `${puzzle.title}: ${after}` : puzzle.title, width);
  const credit = creditRuns(puzzle, isChanged);
  const isOneLine = runWidth(title) + 14 + credit.reduce((sum, run) => sum + runWidth(run) + 4, 0) <= width;
  if (!isOneLine) return [...paragraph([title], width, 1.2), ...paragraph(credit, width, 1.5), space(10)];
  const [row] = paragraph([title], width, 1.2) as [Row];
  const [beside] = paragraph(credit, width, 1.42) as [Row];
  const x = runWidth(title) + 12;
  const baseline = heightOf([row]) - title.style.size * 0.3;
  const draw = (left: number, top: number): string =>
    `${row.draw(left, top)}\n${beside.draw(left + x, top + baseline - beside.height + styles.credit.size * 0.3)}`;
  return [{ height: row.height, draw }, space(12)];
};
