import { areaLabel, dashedBorder } from "../../marks/border.ts";
import type { Term } from "../../terms/term.ts";
import { type Area, areaAt, domainsIn, tooManyToDiffer } from "../area.ts";
import { becauseOfTotal } from "../because/total.ts";
import { type CageBody, cage as cageBody } from "../bodies/cage.ts";
import { faulty, type Kind } from "../contract.ts";
import { unreachable } from "../in-words.ts";
import { sumsOfDifferent } from "../reachable.ts";
import { mayRepeat } from "../readings.ts";
import { addingTo } from "../sums.ts";

interface Cage extends Area {
  readonly sum: number | undefined;
}

export const cage: Kind<CageBody, Cage> = {
  name: "cage",
  body: cageBody,
  resolve: ({ cells: places, sum, tint }, setting) => {
    const area = areaAt(places, tint, setting);
    const domains = domainsIn(setting, area);
    const sums = sumsOfDifferent(domains, sum ?? 0, setting.spend);
    if (sums.size === 0) return faulty(tooManyToDiffer(places, domains));
    if (sum === undefined || sums.has(sum)) return { ...area, sum };
    return faulty({
      at: ["sum"],
      read: String(sum),
      right: unreachable(domains, { how: "different", values: sums, wanted: sum }),
    });
  },
  scopes: ({ cells, sum }) => [{ cells, different: true }, ...(sum === undefined ? [] : [addingTo(cells, sum)])],
  terms: ({ id, cells, sum }): Term[] => [
    { term: "different", owner: id, cells },
    ...(sum === undefined ? [] : [{ term: "sum" as const, owner: id, cells, equals: sum }]),
  ],
  marks: (cage) => [...dashedBorder(cage), ...(cage.sum === undefined ? [] : [areaLabel(cage, String(cage.sum))])],
  words: ({ cells, sum }) => ({
    rule:
      sum === undefined
        ? "Digits in a cage without a number don't repeat."
        : "Digits in a cage don't repeat, and they add up to the number in its corner.",
    title: "Cages",
    noun: "cage",
    plural: "cages",
    called: sum === undefined ? "cage" : `cage of ${sum}`,
    at: cells,
    holds: sum === undefined ? "don't repeat" : `add up to ${sum}`,
  }),
  because: ({ cells, sum }, asked) => (sum === undefined ? undefined : becauseOfTotal(cells, sum, asked)),
  alsoSaid: ["cage", "killer"],
  readings: [mayRepeat("digits in a cage may repeat")],
  relabels: "none",
};
