import { type Board, cellNamed, nounsFor } from "@solvewright/engine";
import { type Cut, showTimes } from "../take/show-times.ts";
import { hasSaid, saidIn } from "../transcript/said.ts";
import type { Deliverable, Show } from "./show.ts";
import { oneLine } from "./texts.ts";
import { clock } from "./times.ts";

/** A cell as it is said, whatever else as it is. */
const said = (board: Board, what: string): string => {
  const cell = cellNamed(board.canvas, what);
  return cell === undefined ? oneLine(what) : nounsFor(board, "placed").cell(cell);
};

const movedLine = (board: Board, { what, at, to }: Cut): string =>
  `- ${clock(at)} in the take: ${said(board, what)}, ${to === undefined ? "dropped" : `moved to ${clock(to)} in the video`}`;

const cutWords = (show: Show): string[] =>
  hasSaid(show)
    ? saidIn(show.recorded!).cut.map(({ text, from }) => `- ${clock(from)} in the recording: "${oneLine(text)}"`)
    : [];

/** Cells that the take never settled for good have no moment. */
const unsettled = ({ board, solution }: Show, settled: ReadonlyMap<string, number>): string[] => {
  const cells = board.canvas.names.filter((name, cell) => !board.puzzle.givens.has(cell) && !settled.has(name));
  return Object.keys(solution).length > 0 && cells.length > 0
    ? [`Never settled in the take:\n\n${cells.map((cell) => `- ${said(board, cell)}`).join("\n")}`]
    : [];
};

/** What lay in a cut, so that it can be looked at before the video goes out. */
export const cutList: Deliverable = {
  name: "cut-list.txt",
  purpose: "What lies in a cut and was moved to its end or dropped, to be looked at once.",
  needs: [],
  isFor: ({ recorded }) => recorded?.take !== undefined || recorded?.cutting !== undefined,
  make: (show) => {
    const { cut, moments } = showTimes(show);
    // The draft's lines are no concern of a video whose words are known.
    const moved = cut.filter(({ to }) => to !== undefined || !hasSaid(show)).map((one) => movedLine(show.board, one));
    const words = cutWords(show);
    return `${[
      moved.length > 0 ? `In a cut\n\n${moved.join("\n")}` : "Nothing of the running order lies in a cut.",
      ...(words.length > 0 ? [`Words in a cut\n\n${words.join("\n")}`] : []),
      ...(moments ? unsettled(show, moments) : []),
    ].join("\n\n")}\n`;
  },
};
