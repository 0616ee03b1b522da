import { type Board, listed, type Puzzle } from "@solvewright/engine";
import { boardScene, boardSvg } from "../../board/board-svg.ts";
import { heightOf, paragraph, type Row, ruled, stacked } from "../../paper/block.ts";
import { balancedHeight, columnsOf } from "../../paper/columns.ts";
import { pageSvg } from "../../paper/page-svg.ts";
import { margin, type Paper, turned } from "../../paper/paper.ts";
import { runWidth } from "../../paper/typeset.ts";
import { oneLine } from "../texts.ts";
import { isAgreed } from "../wanted.ts";
import { type Heading, masthead } from "./masthead.ts";
import { type Measure, ruleScales, rulesRows } from "./rules-rows.ts";
import { styles } from "./styles.ts";

/** A cell larger than that helps nobody's pencil; in smaller ones than that marks get crowded (in points). */
const largest = 60;
const comfortable = 27;

const gap = 22;
const aboveRules = 16;
export const footHeight = 20;

interface Asked extends Heading {
  readonly board: Board;
  readonly paper: Paper;
  /** By cell name; left out, the cells are empty. */
  readonly settled?: Readonly<Record<string, number>>;
  /** The number of its first page, where it is one of several in a booklet. */
  readonly from?: number;
}

const onPrinting = ({ setters }: Puzzle): string => {
  if (setters.length === 0) return "Not to be handed out yet: no setter is named";
  const open = setters.filter((setter) => !isAgreed("print", setter)).map(({ name }) => oneLine(name));
  if (open.length > 0)
    return `Not to be handed out yet: ${listed(open)} ${open.length > 1 ? "have" : "has"} not agreed to printing`;
  return setters.every(({ permission }) => permission.print === "own") ? "" : "Printed with the setter’s permission";
};

const shortened = (text: string, width: number): string => {
  const most = Math.floor(width / 4);
  return text.length > most ? `${text.slice(0, most - 1)}…` : text;
};

/** The line at the foot of a page: what it belongs to, and that it may be printed. */
export const foot = (paper: Paper, [left, right]: readonly [string, string]): string => {
  if (left === "" && right === "") return "";
  const width = paper.width - 2 * margin;
  const top = paper.height - margin - footHeight;
  const said = { text: shortened(right, width * 0.7), style: styles.foot };
  const rightRow = paragraph([said], width + 1);
  const leftRow = left ? paragraph([{ text: shortened(left, width * 0.28), style: styles.foot }], width) : [];
  return [
    ruled(width, 0, 6, true).draw(margin, top),
    stacked(leftRow, margin, top + 6),
    right ? stacked(rightRow, margin + width - runWidth(said), top + 6) : "",
  ].join("\n");
};

/** A board as part of a page, its top left corner at that point; `cell` is points a cell. */
export const boardAt = (
  { board, settled }: Pick<Asked, "board" | "settled">,
  x: number,
  y: number,
  cell: number,
): string => {
  const svg = boardSvg(board, {
    sentences: false,
    setting: "static",
    ground: "sheet",
    cell,
    ...(settled ? { written: { settled } } : {}),
  });
  return svg.replace("<svg", `<svg x="${x.toFixed(2)}" y="${y.toFixed(2)}"`);
};

interface Layout {
  readonly paper: Paper;
  /** Points a cell. */
  readonly cell: number;
  readonly head: readonly Row[];
  readonly measure: Measure;
  /** The rules' height under the board, where they stand there. */
  readonly under?: number;
}

/** Width and height in cells, with all that is drawn round it. */
export const sizeOfBoard = (board: Board): readonly [width: number, height: number] => {
  const { extent } = boardScene(board, { sentences: false });
  return [extent.right - extent.left, extent.bottom - extent.top];
};

const layoutsOn = (asked: Asked, paper: Paper, columns: number): Layout[] => {
  const [wide, high] = sizeOfBoard(asked.board);
  const width = paper.width - 2 * margin;
  const columnWidth = (width - (columns - 1) * gap) / columns;
  const head = masthead(asked.board.puzzle, width, asked);
  const free = paper.height - 2 * margin - footHeight - heightOf(head) - 12;
  const cellIn = (height: number): number => Math.min(largest, width / wide, height / high);
  const alone = { paper, head, measure: { width: columnWidth, scale: 1.1 }, cell: cellIn(free) };
  const together = ruleScales.map((scale): Layout => {
    const measure = { width: columnWidth, scale };
    const under = balancedHeight(rulesRows(asked.board, measure), columns);
    return { ...alone, measure, under, cell: cellIn(free - under - aboveRules) };
  });
  const last = together.at(-1)!;
  return [together.find(({ cell }) => cell >= 0.93 * last.cell) ?? last, alone];
};

/** The rules under the board where the cells stay large enough; on a page turned where that makes them much larger. */
const layoutOf = (asked: Asked): Layout => {
  const [together, alone] = layoutsOn(asked, asked.paper, 2) as [Layout, Layout];
  const [sideways, sidewaysAlone] = layoutsOn(asked, turned(asked.paper), 3) as [Layout, Layout];
  const enough = ({ cell }: Layout, without: Layout): boolean => cell >= Math.min(comfortable, 0.93 * without.cell);
  const upright = sidewaysAlone.cell <= alone.cell * 1.2;
  if (enough(together, alone) && (upright || together.cell >= comfortable)) return together;
  if (enough(sideways, sidewaysAlone)) return sideways;
  return upright ? alone : sidewaysAlone;
};

const dealt = (columns: readonly (readonly Row[])[], width: number, top: number): string =>
  columns.map((rows, k) => stacked(rows, margin + k * (width + gap), top)).join("\n");

const columnsIn = ({ paper, measure: { width } }: Layout): number =>
  Math.round((paper.width - 2 * margin + gap) / (width + gap));

/** Pages of rules alone, for a board that needs a page to itself. */
const rulesPages = (board: Board, layout: Layout, foots: (page: number) => string): string[] => {
  const { paper, measure, head } = layout;
  const count = columnsIn(layout);
  const room = paper.height - 2 * margin - footHeight - heightOf(head) - 8;
  const rows = rulesRows(board, measure);
  const columns = columnsOf(rows, [Math.min(room, balancedHeight(rows, count))]);
  return Array.from({ length: Math.ceil(columns.length / count) }, (_, page) =>
    pageSvg(paper, [
      stacked(head, margin, margin),
      dealt(columns.slice(page * count, (page + 1) * count), measure.width, margin + heightOf(head)),
      foots(page + 1),
    ]),
  );
};

/** A puzzle, or its solution, for print: title and credit, the board with room for pencil marks, the rules. */
export const sheetPages = (asked: Asked): string[] => {
  const { board } = asked;
  const layout = layoutOf(asked);
  const { paper, cell, head, under, measure } = layout;
  const [wide, high] = sizeOfBoard(board);
  const top = margin + heightOf(head);
  const left = margin + (paper.width - 2 * margin - wide * cell) / 2;
  const belongs = under === undefined ? oneLine(board.puzzle.title) : "";
  const foots = (page: number): string =>
    foot(paper, [asked.from === undefined ? belongs : `${asked.from + page}`, onPrinting(board.puzzle)]);
  const rows = rulesRows(board, measure);
  const columns = under === undefined ? [] : columnsOf(rows, [under]);
  const page = pageSvg(paper, [
    stacked(head, margin, margin),
    boardAt(asked, left, top, cell),
    dealt(columns, measure.width, top + high * cell + aboveRules),
    foots(0),
  ]);
  return under === undefined ? [page, ...rulesPages(board, layout, foots)] : [page];
};
