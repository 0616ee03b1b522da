import type { Figure, Paths } from "../scene/figure.ts";

const lookOf = ({ paths: _, ...look }: Paths): string => JSON.stringify(look);

const isLine = (figure: Figure | undefined): figure is Paths => figure?.shape === "paths" && figure.fill === undefined;

/** Lines that follow each other and look alike as one, so that a hundred strokes of one clue are one element. */
export const joinedLines = (figures: readonly Figure[]): Figure[] => {
  const joined: Figure[] = [];
  for (const figure of figures) {
    const last = joined.at(-1);
    if (isLine(figure) && isLine(last) && lookOf(figure) === lookOf(last))
      joined.splice(-1, 1, { ...last, paths: [...last.paths, ...figure.paths] });
    else joined.push(figure);
  }
  return joined;
};
