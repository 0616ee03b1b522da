import { beatPicture } from "../deliverables/beat-picture.ts";
import { asSvg, type Picture, purposeOf, puzzlePicture, solutionPicture } from "../deliverables/pictures.ts";
import type { Deliverable } from "../deliverables/show.ts";
import { pngOf } from "./png-of.ts";

/** The picture as PNG, for wherever SVG is not taken. */
export const asPng = (picture: Picture, form = "for wherever SVG is not taken"): Deliverable => ({
  name: `${picture.name}.png`,
  purpose: purposeOf(picture, form),
  needs: ["consent"],
  make: (show) => pngOf(picture.svg(show, { cell: 96, setting: "static" })),
});

/** A picture in the dark look, for dark pages. */
const inTheDark = (picture: Picture): Picture => ({
  ...picture,
  name: `${picture.name}-dark`,
  purpose: `${picture.purpose} in the dark look`,
  svg: (show, style) => picture.svg(show, { ...style, theme: "dark" }),
});

/** What pictures a pack has beside those that every pack has. */
export interface PicturesAsked {
  /** Numbers of beats, each drawn with its reason. */
  readonly beats: readonly number[];
  /** Every board in the dark look as well. */
  readonly dark: boolean;
}

const ofBeats = {
  names: "beat-*.svg, beat-*.png",
  purpose: "Beats with their reasons drawn, by the numbers of the script. They give digits of the solution away.",
};

/** Pictures that are made only where they are asked for, each as SVG and PNG. */
export const picturesAsked = ({ beats, dark }: PicturesAsked): Deliverable[] => {
  const both = (pictures: readonly Picture[]): Deliverable[] =>
    pictures.flatMap((picture) => [asSvg(picture), asPng(picture)]);
  const light = beats.map(beatPicture);
  const beatFiles = both([...light, ...(dark ? light.map(inTheDark) : [])]).map((file) => ({
    ...file,
    group: ofBeats,
  }));
  return [...both(dark ? [puzzlePicture, solutionPicture].map(inTheDark) : []), ...beatFiles];
};
