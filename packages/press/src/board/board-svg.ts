import { coloursOf, variables } from "../colours.ts";
import { type Extent, extentOf, grown, together } from "../scene/extent.ts";
import type { Figure } from "../scene/figure.ts";
import { type Scene, sceneOf } from "../scene/scene.ts";
import { badgeOf } from "../step/letters.ts";
import { lettersDrawn } from "../step/reading.ts";
import { type SvgOptions, svgOf } from "../svg/svg.ts";
import type { Colour, Theme } from "../tokens.ts";
import { placedBadges } from "./badges.ts";
import { parts } from "./parts.ts";
import { margin, type Picture, pictureOf, type View } from "./picture.ts";
import { sentenceFigures } from "./sentences.ts";
import type { Subject } from "./subject.ts";

export interface BoardOptions extends View, Partial<Omit<SvgOptions, "colours" | "extent" | "ground">> {
  /** Colours for a file that stands alone, or CSS variables for a page that brings them. */
  readonly theme?: Theme | "variables";
  /** The colour behind the board, for the veil; painted only where `painted` says so. */
  readonly ground?: Colour;
  readonly painted?: boolean;
  /** The part of the board that is shown, in grid units from the canvas's top left corner; all of it where left out. */
  readonly window?: Extent;
}

const badges = ({ board, view, reading, puzzle, extent }: Picture, figures: readonly Figure[]): Figure[] => {
  if (!board || !view.letters) return [];
  const shown = view.step ? lettersDrawn(view.letters, reading) : view.letters;
  const ofRule = (id: string): readonly Figure[] => puzzle.filter(({ of }) => of === id);
  return placedBadges(
    shown.map((reason) => badgeOf(reason, board, ofRule)),
    figures,
    extent,
  );
};

const scenes = (picture: Picture): { readonly scene: Scene; readonly extent: Extent } => {
  const figures = parts.flatMap((part) => part(picture));
  const sentences =
    picture.view.sentences === false ? [] : sentenceFigures(picture.clues, grown(picture.extent, -margin));
  const all = [...figures, ...badges(picture, figures), ...sentences];
  return { scene: sceneOf(all), extent: together([picture.extent, ...all.map(extentOf)])! };
};

/** A board as layers of figures and the rectangle that they take up. */
export const boardScene = (subject: Subject, view: View = {}, ground: Colour = "page") =>
  scenes(pictureOf(subject, view, ground));

const labelOf = ({ puzzle: { title, grids } }: Subject): string =>
  `${title || "Puzzle"}: ${grids.map(({ called, size }) => `${called}, ${size} by ${size}`).join("; ")}`;

/** A puzzle, and what is to be shown on it, as one SVG. */
export const boardSvg = (subject: Subject, options: BoardOptions = {}): string => {
  const {
    theme = "light",
    ground = "page",
    painted = false,
    window,
    label = labelOf(subject),
    cell,
    fontCss,
    setting,
    id,
  } = options;
  const { scene, extent } = boardScene(subject, options, ground);
  return svgOf(scene, {
    extent: window ?? extent,
    colours: theme === "variables" ? variables : coloursOf(theme),
    label,
    ...(painted ? { ground } : {}),
    ...(cell === undefined ? {} : { cell }),
    ...(fontCss === undefined ? {} : { fontCss }),
    ...(setting === undefined ? {} : { setting }),
    ...(id === undefined ? {} : { id }),
  });
};
