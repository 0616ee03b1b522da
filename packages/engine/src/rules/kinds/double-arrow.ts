import { doubleArrowDrawing } from "../../marks/arrow.ts";
import { becauseOfBalance, othersThat } from "../because/balance.ts";
import { type PathBody, paths } from "../bodies/path.ts";
import { writePath } from "../bodies/path-text.ts";
import { faulty, type Kind } from "../contract.ts";
import { imbalance } from "../in-balance.ts";
import { endsOf, innerOf, type Line, lineOf } from "../line.ts";
import { sumsOf } from "../reachable.ts";
import { mayNotRepeat } from "../readings.ts";
import { asMuchAs, asMuchAsTerm } from "../sums.ts";

export const doubleArrow: Kind<PathBody, Line> = {
  name: "double-arrow",
  body: paths({ least: 3 }),
  resolve: ({ cells: places }, setting) => {
    const line = lineOf(places, setting);
    const sums = (cells: readonly number[]): readonly number[] => sumsOf(cells.map((cell) => setting.domains[cell]!));
    const fault = imbalance(
      { called: "the two ends", values: sums(endsOf(line.cells)) },
      { called: "the sum between them", values: sums(innerOf(line.cells)) },
    );
    return fault ? faulty({ at: ["cells"], read: writePath(places), ...fault }) : line;
  },
  scopes: ({ cells }) => [asMuchAs(endsOf(cells), innerOf(cells))],
  terms: ({ id, cells }) => [asMuchAsTerm(id, endsOf(cells), innerOf(cells))],
  marks: ({ points }) => doubleArrowDrawing(points),
  words: ({ cells }) => ({
    rule: "The two circled digits of a double arrow add up to as much as all the digits between them. Digits on it may repeat where rows, columns and regions let them.",
    title: "Double arrows",
    noun: "double arrow",
    plural: "double arrows",
    at: endsOf(cells),
    holds: "add up to as much in the circles as between them",
  }),
  because: ({ cells }, asked) =>
    becauseOfBalance(
      [
        [
          { cells: endsOf(cells), makes: "its circles make", rest: () => "the other circle is" },
          {
            cells: innerOf(cells),
            makes: cells.length === 3 ? "the digit between is" : "the digits between make",
            rest: othersThat("between"),
          },
        ],
      ],
      asked,
    ),
  alsoSaid: ["double headed"],
  readings: [mayNotRepeat("digits between the circles of a double arrow don't repeat", ({ cells }) => innerOf(cells))],
  relabels: "none",
};
