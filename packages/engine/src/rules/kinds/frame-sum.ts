import { withBracket } from "../../marks/outside.ts";
import { counted } from "../../speech/english/counts.ts";
import { becauseOfTotal } from "../because/total.ts";
import { optional, whole } from "../bodies/fields.ts";
import { type OutsideBody, outside } from "../bodies/outside.ts";
import { faulty, type Kind } from "../contract.ts";
import { unreachable } from "../in-words.ts";
import { type OutsideClue, outsideClue } from "../outside-clue.ts";
import { sumsOf } from "../reachable.ts";
import { addingTo } from "../sums.ts";

interface FrameSumBody extends OutsideBody {
  readonly sum: number;
  readonly over?: number;
}
interface FrameSum extends OutsideClue {
  readonly sum: number;
}

export const frameSum: Kind<FrameSumBody, FrameSum> = {
  name: "frame-sum",
  body: outside({ numbers: { sum: whole(), over: optional(whole({ least: 1 })) }, from: true }),
  resolve: (body, setting) => {
    const clue = outsideClue(body, setting);
    if ("faults" in clue) return clue;
    const { cells: all } = clue.line;
    const over = body.over ?? Math.min(3, all.length);
    if (over > all.length)
      return faulty({ at: ["over"], read: String(over), right: `at most ${all.length}, the cells of the line` });
    const cells = all.slice(0, over);
    const domains = cells.map((cell) => setting.domains[cell]!);
    const sums = sumsOf(domains);
    if (sums.includes(body.sum)) return { ...clue, cells, sum: body.sum };
    return faulty({
      at: ["sum"],
      read: String(body.sum),
      right: unreachable(domains, { values: sums, wanted: body.sum }),
    });
  },
  scopes: ({ cells, sum }) => [addingTo(cells, sum)],
  terms: ({ id, cells, sum }) => [{ term: "sum", owner: id, cells, equals: sum }],
  marks: ({ stand, sum }) => withBracket(stand, String(sum)),
  words: ({ cells, sum }) => ({
    rule: `A number at a bracket is ${cells.length === 1 ? "the first digit" : `the sum of the first ${counted(cells.length)} digits`} from its side.`,
    title: "Frame sums",
    noun: "frame sum",
    plural: "frame sums",
    called: `frame sum of ${sum}`,
    at: cells,
    holds: `add up to ${sum}`,
  }),
  because: ({ cells, sum }, asked) => becauseOfTotal(cells, sum, asked),
  alsoSaid: ["outside", "bracket", "first three", "first 3"],
  relabels: "none",
};
