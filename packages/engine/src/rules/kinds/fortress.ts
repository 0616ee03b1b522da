import { fortressWall } from "../../marks/fills.ts";
import { type Above, aboveNeighbours, eachAbove, eachAboveTerms, unfitPairs } from "../above.ts";
import { cells as cellsBody, type SetBody } from "../bodies/cells.ts";
import { faulty, type Kind } from "../contract.ts";

export const fortress: Kind<SetBody, Above> = {
  name: "fortress",
  body: cellsBody,
  resolve: ({ cells: places }, setting) => {
    const above = aboveNeighbours(places, "greater", setting);
    const faults = unfitPairs(above, setting);
    return faults.length > 0 ? faulty(...faults) : above;
  },
  scopes: eachAbove,
  terms: eachAboveTerms,
  marks: ({ places }) => fortressWall(places),
  words: ({ own }) => ({
    rule: "Each cell of a fortress is greater than any cell outside it that shares a side with it.",
    title: "Fortresses",
    noun: "fortress",
    plural: "fortresses",
    at: own,
    holds: own.length === 1 ? "is greater than its neighbours" : "are greater than their neighbours outside",
  }),
  alsoSaid: ["greater than ... neighbour", "larger than ... neighbour", "higher than ... neighbour"],
  relabels: "none",
};
