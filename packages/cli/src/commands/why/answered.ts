import {
  after,
  answerLine,
  type Board,
  type Cell,
  capital,
  cellNamed,
  claimOf,
  type Deduction,
  definitionOf,
  judgeOf,
  type Knowledge,
  limitsOf,
  listed,
  type Nouns,
  nounsFor,
  type Position,
  phrase,
  type Step,
  textOf,
  type Why,
  type WhyQuestion,
  type WishList,
  why,
} from "@solvewright/engine";
import { positionIn } from "../../board-file.ts";
import type { Asked } from "../../command.ts";
import { badUsage } from "../../faults.ts";
import { unlessStopped, watching } from "../../long-work.ts";
import { printable } from "../../printable.ts";
import { soundnessOf, watchedProver } from "../../show.ts";
import { wishesIn } from "../../wishes-file.ts";
import { type Start, startFor } from "./start.ts";

const cellIn = ({ canvas }: Board, name: string): Cell => {
  const cell = cellNamed(canvas, name);
  if (cell !== undefined) return cell;
  const right = `a cell of this puzzle, such as ${canvas.names[0]}`;
  throw badUsage(
    `${printable(name)} is no cell of this puzzle. Cells are named by row and column, such as ${canvas.names[0]}.`,
    {
      read: name,
      right,
    },
  );
};

const digitIn = (word: string): number => {
  if (/^\d{1,2}$/.test(word)) return Number(word);
  throw badUsage(`${printable(word)} is no digit.`, { read: word, right: "a digit" });
};

const twoBoards = badUsage("--at and --board each name a board to ask from. Give one of them.", {
  read: "--at and --board together",
  right: "--at <beat> or --board <file>",
});

export const questionIn = (board: Board, [, cell, digit]: Asked["words"]): WhyQuestion => {
  if (cell === undefined)
    throw badUsage("Name the cell that is asked about, or a deduction with --claim.", {
      read: "no cell",
      right: `a cell of this puzzle, such as ${board.canvas.names[0]}`,
    });
  return { cell: cellIn(board, cell), ...(digit === undefined ? {} : { digit: digitIn(digit) }) };
};

/** The steps of an answer as the outside sees them, each said in the state that those before it leave. */
const stepsFrom = (board: Board, start: Knowledge, deductions: readonly Deduction[]): Step[] => {
  const about = definitionOf(board);
  let state = start;
  return deductions.map((deduction, k) => {
    const say = phrase(deduction, state, board, "placed");
    state = after(state, board, deduction);
    const { technique, level } = deduction;
    const claim = claimOf(board, deduction);
    return {
      n: k + 1,
      technique,
      level,
      ...claim,
      because: { ...claim.because, limits: limitsOf(board, about, deduction) },
      say: textOf(say),
      seconds: 0,
    };
  });
};

const cellsSaid = (board: Board, names: readonly string[]): string => {
  const nouns = nounsFor(board, "placed");
  return listed(names.map((name) => nouns.cell(cellNamed(board.canvas, name)!)));
};

const wrongSaid = (board: Board, wrong: readonly string[]): string[] =>
  wrong.length === 0
    ? []
    : [
        `${capital(cellsSaid(board, wrong))} ${wrong.length === 1 ? "is" : "are"} wrong on this board, and left aside here.`,
      ];

const wrongMarksSaid = (board: Board, { wrongMarks, wrongSpots }: Start): string[] => {
  const nouns = nounsFor(board, "placed");
  const spots = wrongSpots.map(({ digit, house }) => `for ${digit} in ${houseSaid(board, nouns, house)}`);
  return [
    ...(wrongMarks.length > 0 ? [`The marks in ${cellsSaid(board, wrongMarks)} leave the right digit out.`] : []),
    ...(spots.length > 0 ? [`The places marked ${listed(spots)} leave the right one out.`] : []),
  ];
};

const houseSaid = (board: Board, nouns: Nouns, id: string): string =>
  board.house(id) ? nouns.house(id) : nouns.rule(id);

/** What is wrong on the asker's board comes before the answer. */
export const boardSaid = (board: Board, start: Start): string[] => [
  ...(start.onTrust
    ? [
        "This puzzle does not have exactly one solution, so the digits on this board are taken as they stand, its marks left aside.",
      ]
    : []),
  ...wrongSaid(board, start.wrong),
  ...wrongMarksSaid(board, start),
];

/** The board to ask from: what a file holds, and how the running order is bent. */
export interface From {
  readonly position: Position | undefined;
  readonly list: WishList;
}

export const onBoard = (board: Board, { position, list }: From, asked: Asked) => {
  const { verdict, solutions } = soundnessOf(board, asked);
  const solution = verdict === "one" ? solutions[0] : undefined;
  return { solution, start: startFor(board, solution, position, list, asked) };
};

const found = (board: Board, question: WhyQuestion, from: From, asked: Asked) => {
  const { solution, start } = onBoard(board, from, asked);
  if (question.digit !== undefined && solution?.[question.cell] === question.digit)
    return { start, found: { answer: "can", steps: [] } satisfies Why };
  const watch = watching(asked, () => asked.out.progress("Looking for the reason"));
  return { start, found: why(start.known, board, question, judgeOf(board, watchedProver(board, watch))) };
};

/** The board that the flags name. Throws where they name two. */
export const fromIn = async (board: Board, asked: Asked): Promise<From> => {
  const { flags } = asked;
  if (typeof flags.at === "string" && typeof flags.board === "string") throw twoBoards;
  const position = typeof flags.board === "string" ? await positionIn(flags.board, board) : undefined;
  return { position, list: await wishesIn(asked) };
};

/** An answer from a board: in a sentence or a few, and its steps. */
export interface Answered extends Pick<Why, "answer"> {
  readonly start: Start;
  readonly steps: readonly Step[];
  readonly say: string;
}

/** Why the cell is what it is, or can't be the digit; undefined where the user stopped it. */
export const answered = (board: Board, question: WhyQuestion, from: From, asked: Asked): Answered | undefined => {
  const made = unlessStopped(() => found(board, question, from, asked));
  if (!made) return undefined;
  const { known } = made.start;
  const say = [...boardSaid(board, made.start), answerLine(board, known, question, made.found)].join(" ");
  return { start: made.start, answer: made.found.answer, steps: stepsFrom(board, known, made.found.steps), say };
};
