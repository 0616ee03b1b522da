import { coloursOf } from "../colours.ts";
import { type Attributes, element, escaped } from "../svg/element.ts";
import { typeOf } from "../svg/type.ts";
import { safeLink } from "./safe-link.ts";
import { type Line, type Placed, type Run, setLines } from "./typeset.ts";

/** Something that stands in a column; heights in points. What is never parted is one row. */
export interface Row {
  readonly height: number;
  /** As SVG, its top left corner at this point. */
  draw(x: number, y: number): string;
  /** Stands in no column without the row below it. */
  readonly keepsWithNext?: boolean;
}

const rounded = (length: number): string => String(Math.round(length * 100) / 100);

const colour = coloursOf("light");

const typeOfRun = ({ style: { face, weight, size, fill } }: Run): Attributes => ({
  "font-size": rounded(size),
  fill: colour(fill),
  ...typeOf("static", face, weight),
});

/** Runs that follow one another without more than a space; what leads somewhere stands by itself. */
const stretches = (line: Line): Placed[][] => {
  const found: Placed[][] = [];
  for (const run of line) {
    const last = found.at(-1)?.at(-1);
    if (!last || run.before || run.link || last.link) found.push([run]);
    else found.at(-1)!.push(run);
  }
  return found;
};

/** One text element, so that its runs follow one another as their letters fall. */
const drawnStretch = (runs: readonly Placed[], left: number, baseline: number): string => {
  const [first, ...others] = runs as [Placed, ...Placed[]];
  const rest = others.map((run) => element("tspan", typeOfRun(run), ` ${escaped(run.text)}`)).join("");
  const at = { x: rounded(left + first.x), y: rounded(baseline) };
  const set = element("text", { ...at, ...typeOfRun(first) }, escaped(first.text) + rest);
  const leads = safeLink(first.link);
  return leads ? element("a", { href: leads }, set) : set;
};

const sizeOf = (line: Line): number => Math.max(...line.map(({ style }) => style.size));

/** Letters stand in their line so that those of two sizes share a baseline. */
const rowOf = (line: Line, leading: number): Row => {
  const height = sizeOf(line) * leading;
  return {
    height,
    draw: (x, y) =>
      stretches(line)
        .map((runs) => drawnStretch(runs, x, y + height - sizeOf(line) * 0.3))
        .join("\n"),
  };
};

export const space = (height: number): Row => ({ height, draw: () => "" });

/** A paragraph as rows, one a line: the first and the last two lines stay together. */
export const paragraph = (runs: readonly Run[], width: number, leading = 1.42): Row[] => {
  const lines = setLines(runs, width);
  return lines.map((line, k) => {
    const row = rowOf(line, leading);
    return lines.length > 1 && (k === 0 || k === lines.length - 2) ? { ...row, keepsWithNext: true } : row;
  });
};

export const heightOf = (rows: readonly Row[]): number => rows.reduce((sum, { height }) => sum + height, 0);

/** Rows under one another, from a point. */
export const stacked = (rows: readonly Row[], x: number, y: number): string => {
  let top = y;
  return rows
    .map(({ draw, height }) => {
      const drawn = draw(x, top);
      top += height;
      return drawn;
    })
    .filter((drawn) => drawn !== "")
    .join("\n");
};

/** Rows side by side as one row: as high as the highest. */
export const beside = (columns: readonly { readonly x: number; readonly rows: readonly Row[] }[]): Row => ({
  height: Math.max(...columns.map(({ rows }) => heightOf(rows))),
  draw: (x, y) => columns.map(({ x: from, rows }) => stacked(rows, x + from, y)).join("\n"),
});

/** A line across, with room above and below it. */
export const ruled = (width: number, above: number, below: number, strong = false): Row => ({
  height: above + below,
  draw: (x, y) =>
    element("path", {
      d: `M${rounded(x)} ${rounded(y + above)}h${rounded(width)}`,
      stroke: colour(strong ? "ink" : "rule"),
      "stroke-width": strong ? "0.75" : "0.5",
    }),
});
