import { type BoardOptions, boardSvg } from "../board/board-svg.ts";
import { coverSvg } from "./cover.ts";
import type { Deliverable, Show } from "./show.ts";

/** A picture of a pack before it is a file of some form: what is on the board. */
export interface Picture {
  readonly name: string;
  readonly purpose: string;
  /** What to heed about it. */
  readonly heed?: string;
  svg(show: Show, style: BoardOptions): string;
}

export const puzzlePicture: Picture = {
  name: "puzzle",
  purpose: "The puzzle as a picture",
  svg: ({ board }, style) => boardSvg(board, { ...style, painted: true }),
};

export const solutionPicture: Picture = {
  name: "solution",
  purpose: "The solution as a picture",
  heed: "Keep it out of sight until the show is out.",
  svg: ({ board, solution }, style) => boardSvg(board, { ...style, painted: true, written: { settled: solution } }),
};

export const coverPicture: Picture = {
  name: "cover",
  purpose: "The picture for the video's cover, with no digit of the solution",
  svg: ({ board, isChanged = false }, style) => coverSvg(board, { ...style, isChanged }),
};

/** What a picture is for in one of its forms. */
export const purposeOf = ({ purpose, heed }: Picture, form: string): string =>
  [`${purpose}, ${form}.`, ...(heed ? [heed] : [])].join(" ");

/** The picture as SVG, which stays sharp at any size and brings its own face. */
export const asSvg = (picture: Picture): Deliverable => ({
  name: `${picture.name}.svg`,
  purpose: purposeOf(picture, "sharp at any size"),
  needs: ["consent"],
  make: (show, { fontCss }) => picture.svg(show, { cell: 72, ...(fontCss ? { fontCss } : {}) }),
});
