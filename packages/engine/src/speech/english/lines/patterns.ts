import { type Digits, digitsOf, either, has, listOf, none, without } from "../../../board/digits.ts";
import { type Fish, fishIn } from "../../../deduce/techniques/fish.ts";
import type { Cell } from "../../../puzzle/canvas.ts";
import { type Part, wordsIn } from "../../line.ts";
import { aDigit, counted, digitsSaid, listed } from "../counts.ts";
import { because, so } from "../nouns.ts";
import { namesOf, type Phrase, type Telling } from "../phrase.ts";
import { concluded, mostWords, sentence, sentences } from "../sentence.ts";
import { conclusion, joint, type Known, knownOf, openSaid } from "./clues.ts";
import { outcome } from "./removals.ts";

/** "these two rows" beside other rows: "those two other rows". */
const other = (name: string): string =>
  name.replace(/^this /, "that other ").replace(/^these (\w+) /, "those $1 other ");

const inOrder = (ids: readonly string[]): string[] =>
  [...ids].sort((a, b) => a.localeCompare(b, "en", { numeric: true }));

/** Houses and clues that a digit is kept in, told from the houses that keep it there. */
const coverNames = ({ nouns }: Telling, { bases, covers }: Fish): string => {
  const houses = inOrder(covers.flatMap(({ link }) => (link.kind === "house" ? [link.id] : [])));
  const rules = covers.flatMap(({ link }) => (link.kind === "rule" ? [nouns.rule(link.id)] : []));
  if (nouns.style === "placed") return listed([...(houses.length > 0 ? [nouns.houses(houses)] : []), ...rules]);
  const sorts = new Set(bases.map(({ id }) => nouns.sort(id)));
  const isAlike = (id: string): boolean => sorts.has(nouns.sort(id));
  const alike = nouns.houseNames(houses.filter(isAlike)).map(other);
  return listed([...nouns.houseNames(houses.filter((id) => !isAlike(id))), ...alike, ...rules]);
};

/** More cells than this are not named one by one. */
const mostNamed = 3;

/** "so there's no 8 here", or of many cells "so these have no 8 elsewhere". */
const noneElsewhere = (telling: Telling, digit: number): Part => {
  const { deduction, board, nouns } = telling;
  const cells = [...deduction.removes.keys()];
  if (cells.length <= mostNamed) return outcome(telling);
  const those = nouns.style === "pointing" ? "those" : "these";
  return so(`${those} have no ${digit} elsewhere`, { cells: namesOf(board, cells) });
};

/** "These two rows keep their 8s in these two columns, so there's no 8 here." */
export const fish: Phrase = (telling) => {
  const { deduction, board, nouns } = telling;
  const found = fishIn(deduction.because, deduction.removes, board);
  const [digit] = [...deduction.removes.values()].flatMap(listOf);
  if (!found) return sentence(because(`wherever these houses put their ${digit}s`), ", ", outcome(telling));
  const bases = nouns.houses(inOrder(found.bases.map(({ id }) => id)));
  const keep = because(`${bases} keep their ${digit}s in ${coverNames(telling, found)}`, {
    cells: namesOf(board, found.places),
  });
  return concluded([keep], undefined, noneElsewhere(telling, digit!));
};

/** "These two rows" and "those two other rows", "these two regions": houses that are held against each other. */
const rivalNames = ({ nouns }: Telling, plus: readonly string[], minus: readonly string[]): [string, string] => {
  const names: [string, string] = [nouns.houses(inOrder(plus)), nouns.houses(inOrder(minus))];
  const isAlike = nouns.sort(plus[0]!) === nouns.sort(minus[0]!);
  return nouns.style === "pointing" && isAlike ? [names[0], other(names[1])] : names;
};

const cellsIn = ({ board }: Telling, ids: readonly string[]): Cell[] => ids.flatMap((id) => board.house(id)!.cells);

const digitsIn = ({ board }: Telling, ids: readonly string[]): Digits =>
  ids.reduce<Digits>((all, id) => either(all, board.house(id)!.digits), none);

/** What houses that share nearly all their cells have in common outside these. */
export const sharedOut = (telling: Telling, plus: readonly string[], minus: readonly string[]): Part[] => {
  const [more, less] = rivalNames(telling, plus, minus);
  const inside = cellsIn(telling, plus).filter((cell) => !cellsIn(telling, minus).includes(cell));
  const outside = cellsIn(telling, minus).filter((cell) => !cellsIn(telling, plus).includes(cell));
  const of = { cells: namesOf(telling.board, [...inside, ...outside]) };
  const besides = without(digitsIn(telling, plus), digitsIn(telling, minus));
  const lacking = without(digitsIn(telling, minus), digitsIn(telling, plus));
  if (besides !== none || lacking !== none) {
    const extra = besides === none ? `all but ${digitsSaid(lacking)}` : `also ${digitsSaid(besides)}`;
    return sentence(because(`outside the cells they share, ${more} has what ${less} has, and ${extra}`, of));
  }
  if (inside.length > 1) {
    const share = `${more} and ${less} share all but ${counted(inside.length)} cells each`;
    return isShort(`${share}, so those hold the same digits`)
      ? sentence(because(share, of), ", so those hold the same digits")
      : sentences(sentence(because(share, of)), sentence("those hold the same digits"));
  }
  if (minus.length === 1 && telling.nouns.style === "pointing")
    return sentence(
      because(`one cell sticks out of ${less} and one is missing from it`, of),
      ": those two are the same digit",
    );
  const share = `${more} and ${less} share all but one cell each`;
  return isShort(`${share}, so those two are the same`)
    ? sentence(because(share, of), ", so those two are the same")
    : sentences(sentence(because(share, of)), sentence("those two are the same digit"));
};

const isShort = (text: string): boolean => wordsIn(text) <= mostWords;

/** "two of those are 3 and 6": digits that stand among the cells left over. */
const standingThere = ({ board }: Telling, { settled, settledCells }: Known): Part[] => {
  if (settled.length === 0) return [];
  const are = settled.length === 1 ? `one of those is ${aDigit(settled[0]!)}` : manyAre(settled);
  return [because(are, { cells: namesOf(board, settledCells) })];
};
const manyAre = (digits: readonly number[]): string =>
  `${counted(digits.length)} of those are ${listed([...digits].sort((a, b) => a - b))}`;

/** "this can't be the 3": of the digits that stand there, those that are gone from the cell that gets another. */
const notThese = ({ deduction, board, nouns }: Telling, { settled, own }: Known): Part | undefined => {
  const [place] = deduction.places;
  const gone = settled.filter((digit) => digit !== place?.[1] && own !== undefined && !has(own, digit));
  if (!place || gone.length === 0) return undefined;
  const name = nouns.style === "pointing" ? "this" : nouns.cell(place[0]);
  return because(`${name} can't be the ${digitsSaid(digitsOf(gone), "or")}`, { cells: namesOf(board, [place[0]]) });
};

const between = (clauses: readonly (readonly Part[])[]): (string | Part)[] =>
  clauses
    .filter((clause) => clause.length > 0)
    .flatMap((clause, k): (string | Part)[] => (k === 0 ? [...clause] : [" and ", ...clause]));

/** "One cell sticks out of this region and one is missing from it: those two are the same digit. So there's no 4 here." */
export const leftovers: Phrase = (telling) => {
  const [counts] = telling.deduction.because.counts ?? [];
  if (!counts) return joint(telling);
  const known = knownOf(telling);
  const reasons = between([standingThere(telling, known), openSaid(telling, known.open)]);
  return sentences(
    sharedOut(telling, counts.plus, counts.minus),
    reasons.length > 0
      ? concluded(reasons, notThese(telling, known), conclusion(telling))
      : sentence("so ", conclusion(telling)),
  );
};
