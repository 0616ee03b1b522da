import { between, centre, distance, type Point, type Step } from "@solvewright/engine";
import { placeNamed } from "../board/subject.ts";
import type { Paint } from "../colours.ts";
import type { Figure } from "../scene/figure.ts";

type Relation = Step["relates"][number];
type Role = "because" | "so";

const inks: Readonly<Record<Role, { readonly line: Paint; readonly text: Paint }>> = {
  because: { line: "because", text: "because-text" },
  so: { line: "so", text: "so-text" },
};

const middle = (name: string): Point => centre(placeNamed(name));

/** The pieces of a tie that stay clear of the digits it joins. */
const tie = (points: readonly Point[], role: Role): Figure => ({
  shape: "paths",
  layer: "conclusion",
  paths: points.slice(1).map((to, k) => {
    const from = points[k]!;
    const share = Math.min(0.45, 0.36 / distance(from, to));
    return { points: [between(from, to, share), between(to, from, share)] };
  }),
  pen: { paint: inks[role].line, width: 0.045, cap: "round" },
});

const sign = (text: string, at: Point, role: Role): Figure[] => [
  { shape: "disc", layer: "conclusion", at, radius: 0.17, fill: "sheet" },
  {
    shape: "text",
    layer: "conclusion",
    at: [at[0], at[1] + 0.11],
    text,
    size: 0.3,
    weight: 700,
    fill: inks[role].text,
  },
];

/** A chevron at the middle of the tie whose point is toward the lesser. */
const chevron = (lesser: Point, greater: Point, role: Role): Figure[] => {
  const at = between(lesser, greater);
  const whole = distance(lesser, greater);
  const [dx, dy] = [(lesser[0] - greater[0]) / whole, (lesser[1] - greater[1]) / whole];
  const turned = (along: number, aside: number): Point => [
    at[0] + dx * along - dy * aside,
    at[1] + dy * along + dx * aside,
  ];
  const points = [turned(-0.08, -0.12), turned(0.08, 0), turned(-0.08, 0.12)];
  return [
    { shape: "disc", layer: "conclusion", at, radius: 0.17, fill: "sheet" },
    {
      shape: "paths",
      layer: "conclusion",
      paths: [{ points }],
      pen: { paint: inks[role].line, width: 0.05, cap: "round" },
    },
  ];
};

/** Two cells or more that are tied together, and how. */
export const relationFigures = (relation: Relation, role: Role): Figure[] => {
  if ("less" in relation) {
    const [lesser, greater] = relation.less.map(middle) as [Point, Point];
    return [tie([lesser, greater], role), ...chevron(lesser, greater, role)];
  }
  if ("sum" in relation) {
    const points = relation.sum.map(middle);
    const at = points.length > 1 ? between(points.at(-2)!, points.at(-1)!) : points[0]!;
    return [tie(points, role), ...sign(String(relation.is), at, role)];
  }
  const ends = ("same" in relation ? relation.same : relation.parity).map(middle) as [Point, Point];
  const text = "same" in relation ? "=" : relation.is === "same" ? "≡" : "≠";
  return [tie(ends, role), ...sign(text, between(...ends), role)];
};
