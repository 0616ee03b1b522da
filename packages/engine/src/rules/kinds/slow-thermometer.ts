import { tube } from "../../marks/tube.ts";
import { type PathBody, paths } from "../bodies/path.ts";
import { chained } from "../chained.ts";
import { climbing } from "../climbing.ts";
import type { Kind } from "../contract.ts";
import { endsOf, type Line } from "../line.ts";

export const slowThermometer: Kind<PathBody, Line> = {
  name: "slow-thermometer",
  body: paths({ least: 2 }),
  resolve: (body, setting) => climbing(body, setting, 0),
  scopes: (line) => chained(line, (low, high) => low <= high),
  terms: ({ id, cells }) => [{ term: "order", owner: id, cells, strict: false }],
  marks: ({ points }) => tube(points, "hollow"),
  words: ({ cells }) => ({
    rule: "Digits on a hollow thermometer never get smaller on the way from the bulb. They may stay the same where rows, columns and regions let them.",
    title: "Hollow thermometers",
    noun: "hollow thermometer",
    plural: "hollow thermometers",
    at: endsOf(cells),
    holds: "never fall on the way from the bulb",
  }),
  alsoSaid: ["thermo"],
  relabels: "none",
};
