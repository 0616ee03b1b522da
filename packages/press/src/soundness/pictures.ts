import { type Board, type Cell, type Clash, namedDigits, type Soundness, type Step } from "@solvewright/engine";
import { type BoardOptions, boardSvg } from "../board/board-svg.ts";

/** The two solutions, with the cells in which they differ; none where there are not two. */
export const differPictures = (
  board: Board,
  { solutions, differ }: Pick<Soundness, "solutions" | "differ">,
  style: BoardOptions = {},
): string[] => {
  if (solutions.length < 2) return [];
  const cells = differ.map((cell) => board.canvas.names[cell]!);
  return solutions.map((solution) =>
    boardSvg(board, { ...style, painted: true, written: { settled: namedDigits(board, solution) }, differ: cells }),
  );
};

/** What can't all hold, drawn as the reasons of a step from which nothing follows. */
const reasonsIn = ({ canvas }: Board, { houses, rules, givens }: Clash): Step => ({
  n: 1,
  technique: "clash",
  level: 1,
  places: {},
  removes: {},
  spots: [],
  relates: [],
  because: {
    facts: Object.fromEntries(givens.map((cell: Cell) => [canvas.names[cell]!, []])),
    spots: [],
    relations: [],
    houses,
    rules,
    recalls: [],
    limits: [],
  },
  say: "",
  seconds: 0,
});

/** A clash: its rules ringed, its houses bracketed, its givens hatched. */
export const clashPicture = (board: Board, clash: Clash, style: BoardOptions = {}): string =>
  boardSvg(board, { ...style, painted: true, step: reasonsIn(board, clash) });
