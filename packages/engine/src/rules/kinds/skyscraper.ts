import { type Digits, digitsOf, isEmpty, listOf, without } from "../../board/digits.ts";
import { aboveTowers } from "../../marks/outside.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { aDigit, counted, listed } from "../../speech/english/counts.ts";
import { assuming, forAll } from "../because/known-sums.ts";
import { countsSeen, missing } from "../because/seen-from-outside.ts";
import { whole } from "../bodies/fields.ts";
import { type OutsideBody, outside } from "../bodies/outside.ts";
import { type Asked, faulty, type Kind, type Setting } from "../contract.ts";
import { lineSaid, type OutsideClue, outsideClue } from "../outside-clue.ts";

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

const seenWith = (cells: readonly Cell[], asked: Asked, cell: Cell, digit: number): readonly number[] =>
  countsSeen(cells, assuming(asked, cell, digit));

/** Digits with which too few or too many are seen, and one with which some fewer or some more. */
const tooFewOrMany = (clue: Skyscraper, asked: Asked, cell: Cell, out: Digits): string | undefined => {
  const mixed = listOf(out).filter((digit) => {
    const counts = seenWith(clue.cells, asked, cell, digit);
    return counts.some((count) => count < clue.sees) && counts.some((count) => count > clue.sees);
  });
  const rest = without(out, digitsOf(mixed));
  const clauses = [
    ...(isEmpty(rest) ? [] : [onOneSide(clue, asked, cell, rest)]),
    ...(mixed.length > 0 ? [never(clue, asked, cell, digitsOf(mixed))] : []),
  ];
  return clauses.includes(undefined) ? undefined : clauses.join(", and ");
};

const onOneSide = ({ cells, sees }: Skyscraper, asked: Asked, cell: Cell, out: Digits): string | undefined => {
  const first = cell === cells[0];
  return missing(
    sees,
    out,
    (digit) => {
      const counts = seenWith(cells, asked, cell, digit);
      return counts.length === 0 ? undefined : [counts[0]!, counts.at(-1)!];
    },
    {
      short: (digits, most) => `${digits}${first ? " in front" : ""} leaves at most ${counted(most)} to be seen`,
      over: (digits, least) => `with ${digits}${first ? " in front" : ""} at least ${counted(least)} are seen`,
    },
  );
};

/** One digit with which some fewer or some more are seen: "with a 3, one or four are seen, never three". */
const never = ({ cells, sees }: Skyscraper, asked: Asked, cell: Cell, out: Digits): string | undefined => {
  const [digit, another] = listOf(out);
  const counts = digit === undefined || another !== undefined ? [] : seenWith(cells, asked, cell, digit);
  if (counts.length === 0 || counts.length > 3 || counts.includes(sees)) return undefined;
  return `with ${aDigit(digit!)}, ${listed(counts.map(counted), "or")} are seen, never ${counted(sees)}`;
};

/** The only one that is seen hides all others. */
const hidesAll = ({ cells, sees }: Skyscraper, asked: Asked, cell: Cell, out: Digits): string | undefined => {
  const canShowOne = (digit: number): boolean => seenWith(cells, asked, cell, digit).includes(1);
  if (sees !== 1 || cell !== cells[0] || cells.length === 1 || listOf(out).some(canShowOne)) return undefined;
  return "the first hides all the rest, as only one is seen";
};

/** Whether so many digits can be seen: by the greatest digit so far, the numbers that may have been seen, as bits. */
const canSee = ({ cells, sees }: Skyscraper, { domains }: Pick<Setting, "domains">): boolean => {
  let seen: readonly number[] = [1];
  for (const cell of cells) {
    const digits = listOf(domains[cell]!);
    // By the greatest digit and one more, so that there is a place for none.
    const further = Array.from({ length: 33 }, (_, above) => (digits[0]! < above ? (seen[above] ?? 0) : 0));
    for (const digit of digits)
      for (let above = 0; above <= digit; above++) further[digit + 1]! |= (seen[above] ?? 0) << 1;
    seen = further;
  }
  return sees < 32 && seen.some((numbers) => (numbers >>> sees) & 1);
};

export const skyscraper: Kind<SkyscraperBody, Skyscraper> = {
  name: "skyscraper",
  body: outside({ numbers: { sees: whole({ least: 1 }) }, from: true }),
  resolve: (body, setting) => {
    const clue = outsideClue(body, setting);
    if ("faults" in clue) return clue;
    const made = { ...clue, sees: body.sees };
    if (canSee(made, setting)) return made;
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
  because: (clue, asked) =>
    forAll(asked, (cell, out) => hidesAll(clue, asked, cell, out) ?? tooFewOrMany(clue, asked, cell, out)),
  alsoSaid: ["skyscraper", "visible", "seen", "see"],
  relabels: "none",
};
