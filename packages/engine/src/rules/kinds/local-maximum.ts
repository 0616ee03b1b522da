import { chevronsOut } from "../../marks/cell-marks.ts";
import { centre } from "../../marks/points.ts";
import { type Above, aboveNeighbours, eachAbove, eachAboveTerms, touching, unfitPairs } from "../above.ts";
import { cells as cellsBody, type SetBody } from "../bodies/cells.ts";
import { faulty, type Kind } from "../contract.ts";

export const localMaximum: Kind<SetBody, Above> = {
  name: "local-maximum",
  body: cellsBody,
  resolve: ({ cells: places }, setting) => {
    const above = aboveNeighbours(places, "greater", setting);
    const faults = [...touching(places, "greater", setting), ...unfitPairs(above, setting)];
    return faults.length > 0 ? faulty(...faults) : above;
  },
  scopes: eachAbove,
  terms: eachAboveTerms,
  marks: ({ places }) => places.flatMap((place) => chevronsOut(centre(place))),
  words: ({ own }) => ({
    rule: "A cell with chevrons pointing out is a peak: greater than every cell that shares a side with it.",
    title: "Peaks",
    noun: "peak",
    plural: "peaks",
    at: own,
    holds: own.length === 1 ? "is greater than its neighbours" : "are greater than their neighbours",
  }),
  alsoSaid: ["local max", "greater than ... neighbour", "larger than ... neighbour", "higher than ... neighbour"],
  relabels: "none",
};
