import { areaLabel, dottedBorder } from "../../marks/border.ts";
import { type Area, areaAt, domainsIn } from "../area.ts";
import { becauseOfTotal } from "../because/total.ts";
import { type CellsSumBody, cellsSum } from "../bodies/cage.ts";
import { faulty, type Kind } from "../contract.ts";
import { unreachable } from "../in-words.ts";
import { sumsOf } from "../reachable.ts";
import { mayNotRepeat } from "../readings.ts";
import { addingTo } from "../sums.ts";

interface SumArea extends Area {
  readonly sum: number;
}

export const sumArea: Kind<CellsSumBody, SumArea> = {
  name: "sum-area",
  body: cellsSum,
  resolve: ({ cells: places, sum, tint }, setting) => {
    const area = areaAt(places, tint, setting);
    const domains = domainsIn(setting, area);
    const values = sumsOf(domains);
    if (values.includes(sum)) return { ...area, sum };
    return faulty({ at: ["sum"], read: String(sum), right: unreachable(domains, { values, wanted: sum }) });
  },
  scopes: ({ cells, sum }) => [addingTo(cells, sum)],
  terms: ({ id, cells, sum }) => [{ term: "sum", owner: id, cells, equals: sum }],
  marks: (area) => [...dottedBorder(area), areaLabel(area, `Σ${area.sum}`)],
  words: ({ cells, sum }) => ({
    rule: "Digits in a dotted area add up to its number. They may repeat where rows, columns and regions let them.",
    title: "Sum areas",
    noun: "sum area",
    plural: "sum areas",
    called: `sum area of ${sum}`,
    at: cells,
    holds: `add up to ${sum}`,
  }),
  because: ({ cells, sum }, asked) => becauseOfTotal(cells, sum, asked),
  alsoSaid: ["area"],
  readings: [mayNotRepeat("digits in a sum area don't repeat", ({ cells }) => cells)],
  relabels: "none",
};
