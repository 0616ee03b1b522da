import type { Board } from "@solvewright/engine";
import { heightOf, paragraph, type Row, ruled, space, stacked } from "../../paper/block.ts";
import { columnsOf } from "../../paper/columns.ts";
import { pageSvg } from "../../paper/page-svg.ts";
import { margin, type Paper } from "../../paper/paper.ts";
import { runWidth } from "../../paper/typeset.ts";
import type { Show } from "../show.ts";
import { oneLine } from "../texts.ts";
import { creditRuns } from "./masthead.ts";
import { boardAt, foot, footHeight, sheetPages, sizeOfBoard } from "./sheet-pages.ts";
import { heading, styles } from "./styles.ts";

/** A puzzle of a booklet with its solution by cell name. */
export type BookletPuzzle = Pick<Show, "board" | "solution">;

export interface Booklet {
  readonly title: string;
  readonly puzzles: readonly BookletPuzzle[];
  readonly paper: Paper;
}

const titleOf = ({ puzzle }: Board): string => oneLine(puzzle.title) || "Untitled";

/** A title in at most two lines of its own, and the credit. */
const smallHead = (board: Board, width: number): Row[] => [
  ...paragraph([{ text: titleOf(board), style: heading(13, 600) }], width, 1.25).slice(0, 2),
  ...paragraph(
    creditRuns(board.puzzle).map((run) => ({ ...run, style: styles.text })),
    width,
  ).slice(0, 2),
  space(6),
];

/** Solutions stand two by two. */
const side = 2;
const gap = 26;

const solutionIn = (
  { board, solution }: BookletPuzzle,
  x: number,
  y: number,
  width: number,
  height: number,
): string => {
  const head = smallHead(board, width);
  const [wide, high] = sizeOfBoard(board);
  const cell = Math.min(width / wide, (height - heightOf(head)) / high, 30);
  return `${stacked(head, x, y)}\n${boardAt({ board, settled: solution }, x, y + heightOf(head), cell)}`;
};

const solutionPages = ({ puzzles, paper }: Booklet, from: number): string[] => {
  const each = side * side;
  const width = (paper.width - 2 * margin - gap) / side;
  const top = margin + 40;
  const height = (paper.height - top - margin - footHeight - gap - 8) / side;
  return Array.from({ length: Math.ceil(puzzles.length / each) }, (_, page) =>
    pageSvg(paper, [
      stacked(paragraph([{ text: "Solutions", style: heading(20) }], paper.width, 1.2), margin, margin),
      ...puzzles
        .slice(page * each, (page + 1) * each)
        .map((puzzle, k) =>
          solutionIn(
            puzzle,
            margin + (k % side) * (width + gap),
            top + Math.floor(k / side) * (height + gap),
            width,
            height,
          ),
        ),
      foot(paper, [`${from + page}`, ""]),
    ]),
  );
};

interface Listed {
  readonly board: Board;
  readonly page: number;
}

const entry = ({ board, page }: Listed, width: number): Row[] => {
  const number = { text: `${page}`, style: styles.text };
  const [first, ...rest] = paragraph(
    [
      { text: titleOf(board), style: heading(13, 600) },
      ...creditRuns(board.puzzle).map((run, k) => ({ ...run, style: styles.text, before: k === 0 ? 6 : 0 })),
    ],
    width - 40,
    1.6,
  ) as [Row, ...Row[]];
  const [right] = paragraph([number], 40, 1.6) as [Row];
  const draw = (x: number, y: number): string =>
    `${first.draw(x, y)}\n${right.draw(x + width - runWidth(number), y + first.height - right.height - 1)}`;
  return [{ ...first, draw }, ...rest, space(4)];
};

const contents = ({ title, paper }: Booklet, listed: readonly Listed[], solutionsFrom: number): string[] => {
  const width = paper.width - 2 * margin;
  const rows = [
    ...paragraph([{ text: oneLine(title).slice(0, 200), style: heading(29) }], width, 1.2),
    ruled(width, 14, 14, true),
    ...listed.flatMap((one) => entry(one, width)),
    ...paragraph([{ text: `Solutions from page ${solutionsFrom} on`, style: styles.text }], width, 2.4),
  ];
  const pages = columnsOf(rows, [paper.height - 2 * margin - footHeight]);
  return pages.map((page, k) => pageSvg(paper, [stacked(page, margin, margin), foot(paper, [`${k + 1}`, ""])]));
};

/** Several puzzles for print: what is in it, a sheet each, and all solutions small at the end. */
export const bookletPages = (booklet: Booklet): string[] => {
  const { puzzles, paper } = booklet;
  const blank = puzzles.map(({ board }): Listed => ({ board, page: 1 }));
  const before = contents(booklet, blank, 1).length;
  let page = before + 1;
  const sheets: string[] = [];
  const listed = puzzles.map(({ board }): Listed => {
    const here = { board, page };
    const pages = sheetPages({ board, paper, from: page });
    sheets.push(...pages);
    page += pages.length;
    return here;
  });
  return [...contents(booklet, listed, page), ...sheets, ...solutionPages(booklet, page)];
};
