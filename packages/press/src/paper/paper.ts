/** A sheet of paper; lengths in points (1/72 inch). */
export interface Paper {
  readonly name: "a4" | "letter";
  readonly called: string;
  readonly width: number;
  readonly height: number;
}

/** ISO 216: 210 by 297 mm. */
export const a4: Paper = { name: "a4", called: "A4", width: 595.28, height: 841.89 };
/** 8.5 by 11 inches. */
export const letter: Paper = { name: "letter", called: "Letter", width: 612, height: 792 };
/** As wide as A4 and as high as Letter: printed on either, nothing is lost and nothing shrinks. */
export const either: Pick<Paper, "width" | "height"> = { width: a4.width, height: letter.height };
export const papers: readonly Paper[] = [a4, letter];

export const turned = (paper: Paper): Paper => ({ ...paper, width: paper.height, height: paper.width });

/** What stays white at every edge, so that any printer and a punch have room. */
export const margin = 45;
