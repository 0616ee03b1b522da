import { element } from "../svg/element.ts";
import type { Paper } from "./paper.ts";

/** One page, in points from its top left corner. */
export const pageSvg = ({ width, height }: Pick<Paper, "width" | "height">, content: readonly string[]): string =>
  element(
    "svg",
    { xmlns: "http://www.w3.org/2000/svg", viewBox: `0 0 ${width} ${height}`, fill: "none" },
    `\n${content.filter((part) => part !== "").join("\n")}\n`,
  );
