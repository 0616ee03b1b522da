import { boardSvg } from "../board/board-svg.ts";
import type { Deliverable } from "./show.ts";

const style = ({ fontCss }: { readonly fontCss?: string }) => ({
  painted: true,
  ground: "page" as const,
  cell: 72,
  ...(fontCss ? { fontCss } : {}),
});

export const puzzlePicture: Deliverable = {
  name: "puzzle.svg",
  purpose: "The puzzle as a picture.",
  text: ({ board }, assets) => boardSvg(board, style(assets)),
};

export const solutionPicture: Deliverable = {
  name: "solution.svg",
  purpose: "The solution as a picture. Keep it out of sight until the show is out.",
  text: ({ board, solution }, assets) => boardSvg(board, { ...style(assets), written: { settled: solution } }),
};
