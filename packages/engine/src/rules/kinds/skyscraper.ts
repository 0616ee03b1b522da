import { aboveTowers } from "../../marks/outside.ts";
import { whole } from "../bodies/fields.ts";
import { type OutsideBody, outside } from "../bodies/outside.ts";
import { faulty, type Kind } from "../contract.ts";
import { canEnd, lineSaid, type OutsideClue, outsideClue } from "../outside-clue.ts";

interface SkyscraperBody extends OutsideBody {
  readonly sees: number;
}
interface Skyscraper extends OutsideClue {
  readonly sees: number;
}

/** The state is the greatest digit so far, and this much more for each digit that is seen. */
const oneSeen = 32;

const reading = ({ cells, sees }: Skyscraper) => ({
  cells,
  start: -1,
  next: (read: number | string, digit: number): number => {
    const state = Number(read);
    if (state < 0) return oneSeen + digit;
    const greatest = state % oneSeen;
    return digit > greatest ? state - greatest + oneSeen + digit : state;
  },
  ok: (state: number | string): boolean => Math.floor(Number(state) / oneSeen) === sees,
});

export const skyscraper: Kind<SkyscraperBody, Skyscraper> = {
  name: "skyscraper",
  body: outside({ numbers: { sees: whole({ least: 1 }) }, from: true }),
  resolve: (body, setting) => {
    const clue = outsideClue(body, setting);
    if ("faults" in clue) return clue;
    const made = { ...clue, sees: body.sees };
    if (canEnd(reading(made), setting)) return made;
    const right = `how many digits of ${lineSaid(clue.line, setting)} can be greater than all before them`;
    return faulty({ at: ["sees"], read: String(body.sees), right });
  },
  scopes: (clue) => [reading(clue)],
  terms: (clue) => [{ term: "automaton", owner: clue.id, ...reading(clue) }],
  marks: ({ stand, sees }) => aboveTowers(stand, String(sees)),
  words: ({ cells, sees }) => ({
    rule: "A number above towers says how many digits are seen from its side. Each digit hides all smaller ones behind it.",
    title: "Skyscrapers",
    noun: "skyscraper clue",
    plural: "skyscraper clues",
    called: `skyscraper clue of ${sees}`,
    at: cells,
    holds: `show ${sees} from that side`,
  }),
  relabels: "none",
};
