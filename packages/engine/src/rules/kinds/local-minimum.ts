import { chevronsIn } from "../../marks/cell-marks.ts";
import { centre } from "../../marks/points.ts";
import { type Above, aboveNeighbours, eachAbove, eachAboveTerms, touching, unfitPairs } from "../above.ts";
import { cells as cellsBody, type SetBody } from "../bodies/cells.ts";
import { faulty, type Kind } from "../contract.ts";

export const localMinimum: Kind<SetBody, Above> = {
  name: "local-minimum",
  body: cellsBody,
  resolve: ({ cells: places }, setting) => {
    const above = aboveNeighbours(places, "less", setting);
    const faults = [...touching(places, "less", setting), ...unfitPairs(above, setting)];
    return faults.length > 0 ? faulty(...faults) : above;
  },
  scopes: eachAbove,
  terms: eachAboveTerms,
  marks: ({ places }) => places.flatMap((place) => chevronsIn(centre(place))),
  words: ({ own }) => ({
    rule: "A cell with chevrons pointing in is a dip: less than every cell that shares a side with it.",
    title: "Dips",
    noun: "dip",
    plural: "dips",
    at: own,
    holds: own.length === 1 ? "is less than its neighbours" : "are less than their neighbours",
  }),
  alsoSaid: ["local min", "less than ... neighbour", "smaller than ... neighbour", "lower than ... neighbour"],
  relabels: "none",
};
