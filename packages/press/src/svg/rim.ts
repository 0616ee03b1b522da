import { extentOf, grown, middleOf } from "../scene/extent.ts";
import type { Figure, Rim, Text } from "../scene/figure.ts";

const boxRound = (figure: Text, by: number): Figure => {
  const extent = grown(extentOf(figure), by);
  const { layer } = figure;
  return {
    shape: "box",
    layer,
    at: middleOf(extent),
    width: extent.right - extent.left,
    height: extent.bottom - extent.top,
    round: by,
  };
};

/** A figure swollen by that much on every side: filled where it encloses something, its line thickened where not. */
const swollen = (figure: Figure, by: number, paint: "dot-white" | "dot-black"): Figure => {
  const edge = (figure.pen?.width ?? 0) / 2 + by;
  const { layer } = figure;
  switch (figure.shape) {
    case "disc":
      return { shape: "disc", layer, at: figure.at, radius: figure.radius + edge, fill: paint };
    case "box": {
      const [width, height] = [figure.width + 2 * edge, figure.height + 2 * edge];
      return { shape: "box", layer, at: figure.at, width, height, round: (figure.round ?? 0) + edge, fill: paint };
    }
    case "text":
      return { ...boxRound(figure, by), fill: paint };
    case "paths": {
      const fill = figure.fill || figure.paths.every(({ closed }) => closed) ? { fill: paint } : {};
      const pen = { paint, width: 2 * edge, cap: "round", join: "round" } as const;
      return { shape: "paths", layer, paths: figure.paths, pen, ...fill };
    }
    default:
      return figure;
  }
};

/** What a mask shows and then hides again, so that a rim is left. */
export const maskOf = ({ round, inner, outer }: Rim): { readonly shown: Figure[]; readonly hidden: Figure[] } => ({
  shown: round.map((figure) => swollen(figure, outer, "dot-white")),
  hidden: round.map((figure) => swollen(figure, inner, "dot-black")),
});
