import { tube } from "../../marks/tube.ts";
import { type PathBody, paths } from "../bodies/path.ts";
import { chained } from "../chained.ts";
import { climbing } from "../climbing.ts";
import type { Kind } from "../contract.ts";
import { endsOf, type Line } from "../line.ts";

export const thermometer: Kind<PathBody, Line> = {
  name: "thermometer",
  body: paths({ least: 2 }),
  resolve: (body, setting) => climbing(body, setting, 1),
  scopes: (line) => chained(line, (low, high) => low < high),
  terms: ({ id, cells }) => [{ term: "order", owner: id, cells, strict: true }],
  marks: ({ points }) => tube(points, "full"),
  words: ({ cells }) => ({
    rule: "Digits on a thermometer get larger with every step away from the bulb.",
    title: "Thermometers",
    noun: "thermometer",
    plural: "thermometers",
    at: endsOf(cells),
    holds: "climb from the bulb",
  }),
  alsoSaid: ["thermo"],
  relabels: "none",
};
