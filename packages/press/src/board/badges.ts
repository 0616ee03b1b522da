import type { Point } from "@solvewright/engine";
import type { Paint } from "../colours.ts";
import { type Extent, extentOf, grown, shared } from "../scene/extent.ts";
import type { Figure, LayerName } from "../scene/figure.ts";

/** What a letter stands for; its badge is a circle, a blunt square or a square. */
export type BadgeKind = "cell" | "rule" | "so";

export interface Badge {
  readonly letter: string;
  readonly kind: BadgeKind;
  /** Where it may stand, the best first. */
  readonly places: readonly Point[];
}

const half = 0.17;
const looks: Readonly<Record<BadgeKind, { readonly line: Paint; readonly text: Paint; readonly round: number }>> = {
  cell: { line: "because", text: "because-text", round: half },
  rule: { line: "rule-use", text: "rule-use-text", round: 0.07 },
  so: { line: "so", text: "so-text", round: 0.02 },
};

const badgeFigures = (letter: string, kind: BadgeKind, at: Point): Figure[] => {
  const { line, text, round } = looks[kind];
  const box = (grow: number, look: Pick<Figure, "fill" | "pen">): Figure => ({
    shape: "box",
    layer: "letter",
    at,
    width: 2 * (half + grow),
    height: 2 * (half + grow),
    round: round + grow,
    of: letter,
    ...look,
  });
  return [
    box(0.05, { fill: "sheet" }),
    box(0, { fill: "sheet", pen: { paint: line, width: 0.045 } }),
    {
      shape: "text",
      layer: "letter",
      at: [at[0], at[1] + 0.08],
      text: letter,
      size: 0.26,
      weight: 700,
      face: "desk",
      fill: text,
      of: letter,
    },
  ];
};

/** What a badge should not cover, and how much it would mind. */
const weights: Partial<Record<LayerName, number>> = {
  digit: 1,
  conclusion: 1,
  edge: 1.5,
  cage: 0.4,
  outside: 1.5,
  focus: 0.5,
  ring: 0.3,
};

interface Obstacle {
  readonly extent: Extent;
  readonly weight: number;
}

const obstaclesOf = (figures: readonly Figure[]): Obstacle[] =>
  figures.flatMap((figure) => {
    const weight = figure.shape === "paths" && figure.layer !== "conclusion" ? 0 : (weights[figure.layer] ?? 0);
    return weight > 0 && figure.shape !== "rim" ? [{ extent: extentOf(figure), weight }] : [];
  });

const boxAt = ([x, y]: Point): Extent => grown({ left: x, top: y, right: x, bottom: y }, half + 0.05);

/** How bad a place is: what the badge covers there, and how far it sticks out of the picture. */
const badness = (at: Point, rank: number, obstacles: readonly Obstacle[], frame: Extent): number => {
  const box = boxAt(at);
  const covered = obstacles.reduce((sum, { extent, weight }) => sum + weight * shared(box, extent), 0);
  const outside = (2 * half + 0.1) ** 2 - shared(box, frame);
  return covered + 0.7 * outside + rank * 0.0005;
};

/** Puts each letter where it covers least, one after the other, and draws it. */
export const placedBadges = (badges: readonly Badge[], figures: readonly Figure[], frame: Extent): Figure[] => {
  const obstacles = obstaclesOf(figures);
  return badges.flatMap(({ letter, kind, places }) => {
    const ranked = places.map((at, rank) => ({ at, bad: badness(at, rank, obstacles, frame) }));
    const best = ranked.reduce<(typeof ranked)[number] | undefined>((a, b) => (a && a.bad <= b.bad ? a : b), undefined);
    if (!best) return [];
    obstacles.push({ extent: boxAt(best.at), weight: 3 });
    return badgeFigures(letter, kind, best.at);
  });
};
