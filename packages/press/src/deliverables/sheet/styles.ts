import type { Style } from "../../paper/typeset.ts";

/** Type on paper, in points: what is read of a puzzle in Besley, all around it in Commissioner. */
export const styles = {
  text: { face: "desk", weight: 500, size: 9.5, fill: "ink" },
  strong: { face: "desk", weight: 600, size: 9.5, fill: "ink" },
  lead: { face: "voice", weight: 600, size: 10.5, fill: "ink" },
  credit: { face: "desk", weight: 500, size: 13, fill: "ink-2" },
  foot: { face: "desk", weight: 500, size: 8, fill: "ink-3" },
} as const satisfies Readonly<Record<string, Style>>;

export const heading = (size: number, weight = 700): Style => ({ face: "voice", weight, size, fill: "ink" });
