import type { Board } from "../../board/board.ts";
import { has, min } from "../../board/digits.ts";
import { isSettled, type Knowledge } from "../../board/knowledge.ts";
import type { Deduction } from "../../deduce/deduction.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { type Part, type Style, textOf, wordsIn } from "../line.ts";
import { aDigit, listed } from "./counts.ts";
import { because, type Nouns, nounsFor, so } from "./nouns.ts";
import { namesOf } from "./phrase.ts";
import { mostWords, sentence } from "./sentence.ts";

/** A step with the state just before it. */
export interface Said {
  readonly deduction: Deduction;
  readonly before: Knowledge;
}

/** So many of a beat's steps in one sentence. */
export interface Joined {
  readonly count: number;
  readonly parts: readonly Part[];
}

interface Speaking {
  readonly board: Board;
  readonly nouns: Nouns;
}

const placeOf = ({ deduction }: Said): readonly [Cell, number] => [...deduction.places][0]!;

const houseOf = ({ deduction }: Said): string | undefined => deduction.because.houses[0];

/** What keeps a digit out of the other open cells of the house, where that is nothing but houses that have it. */
const barriers = ({ deduction, before }: Said, house: string, board: Board): readonly string[] | undefined => {
  const { technique, because, places } = deduction;
  const [digit] = places.values();
  const cells = board.house(house)!.cells;
  const isPlain =
    technique === "only-place" &&
    because.rules.length === 0 &&
    because.houses.includes(house) &&
    cells.every((cell) => has(board.domains[cell]!, digit!)) &&
    [...because.facts].every(
      ([cell, digits]) => isSettled(before, cell) && (min(digits) === digit || cells.includes(cell)),
    );
  return isPlain ? because.houses.filter((id) => id !== house) : undefined;
};

const cellsSettled = (steps: readonly Said[]): Cell[] => steps.map((step) => placeOf(step)[0]);

/** How many steps from the first on finish a house between them, the last digit being all that is left: two or more, else 0. */
const finishing = (steps: readonly Said[], house: string, board: Board): number => {
  const cells = board.house(house)!.cells;
  const open = cells.filter((cell) => !isSettled(steps[0]!.before, cell)).length;
  const run = steps.slice(0, open);
  const isWhole =
    open >= 2 &&
    open <= 3 &&
    run.length === open &&
    run.at(-1)!.deduction.technique === "last-cell" &&
    cellsSettled(run).every((cell) => cells.includes(cell)) &&
    run.slice(0, -1).every((step) => barriers(step, house, board));
  return isWhole ? open : 0;
};

const isDigits = (steps: readonly Said[], { board, nouns }: Speaking): Part[] =>
  steps.flatMap((step, k): Part[] => {
    const [cell, digit] = placeOf(step);
    const join = k === 0 ? "" : k === steps.length - 1 ? " and " : ", ";
    return [
      ...(join ? [{ text: join, role: "plain" } as const] : []),
      so(`${nouns.cell(cell)} is ${aDigit(digit)}`, { cells: namesOf(board, [cell]) }),
    ];
  });

const haveIt = (step: Said, house: string, { board, nouns }: Speaking): Part => {
  const ids = barriers(step, house, board)!;
  const [, digit] = placeOf(step);
  return because(`${nouns.houses(ids)} ${ids.length === 1 ? "has" : "have"} ${aDigit(digit)}`, { house: ids[0]! });
};

/** "3 and 7 finish this box: this column has a 7." */
const finish = (steps: readonly Said[], house: string, speaking: Speaking): Part[] => {
  const { board, nouns } = speaking;
  const digits = steps.map((step) => placeOf(step)[1]).sort((a, b) => a - b);
  const reasons = steps.slice(0, -1).flatMap((step, k): Part[] => {
    const reason = haveIt(step, house, speaking);
    return k === 0 ? [reason] : [{ text: ", and ", role: "plain" }, reason];
  });
  return sentence(
    so(`${listed(digits)} finish `, { cells: namesOf(board, cellsSettled(steps)) }),
    because(nouns.house(house), { house }),
    ": ",
    reasons,
    ...(nouns.style === "placed" ? [", so ", ...isDigits(steps, speaking)] : []),
  );
};

/** So many houses are named one by one; more are pointed at by their digits alone. */
const mostNamed = 3;

/** "This row just needs a 4, this column a 7 and this box a 3." */
const oneLeftEach = (steps: readonly Said[], speaking: Speaking): Part[] => {
  const { board, nouns } = speaking;
  const pieces = steps.flatMap((step, k): (string | Part)[] => {
    const [cell, digit] = placeOf(step);
    const id = houseOf(step)!;
    const before = k > 0 && nouns.sort(houseOf(steps[k - 1]!)!) === nouns.sort(id);
    return [
      k === 0 ? "" : k === steps.length - 1 ? " and " : ", ",
      because(before ? "this one" : nouns.house(id), { house: id }),
      k === 0 ? " just needs " : " ",
      so(aDigit(digit), { cells: namesOf(board, [cell]) }),
    ];
  });
  return sentence(...pieces);
};

/** Where in a beat, and in the show, a sentence stands. */
interface Place {
  /** The grid is full after it. */
  readonly isEnd: boolean;
  readonly isFirst: boolean;
}

/** "Then each of these has one place left: 4, 7, 3 and 5."; the end of a show: "The rest falls out, ..." */
const runOut = (steps: readonly Said[], speaking: Speaking, { isEnd, isFirst }: Place): Part[] => {
  const { board, nouns } = speaking;
  const lead = isEnd
    ? "the rest falls out, one to each row, column or box"
    : isFirst
      ? "each of these is the last one in its row, column or box"
      : "then each of these has one place left";
  const named = nouns.style === "placed" ? isDigits(steps, speaking) : digitsPointed(steps, board);
  return sentence(because(lead, { cells: namesOf(board, cellsSettled(steps)) }), ": ", named);
};

const digitsPointed = (steps: readonly Said[], board: Board): Part[] =>
  steps.flatMap((step, k): Part[] => {
    const [cell, digit] = placeOf(step);
    const join = k === 0 ? "" : k === steps.length - 1 ? " and " : ", ";
    return [
      ...(join ? [{ text: join, role: "plain" } as const] : []),
      so(`${digit}`, { cells: namesOf(board, [cell]) }),
    ];
  });

const lastCells = (steps: readonly Said[], speaking: Speaking, place: Place): Joined | undefined => {
  const end = steps.findIndex(({ deduction }) => deduction.technique !== "last-cell");
  const run = end < 0 ? steps : steps.slice(0, end);
  if (run.length < 2) return undefined;
  const isNamed = run.length <= mostNamed && speaking.nouns.style === "pointing";
  const parts = isNamed
    ? oneLeftEach(run, speaking)
    : runOut(run, speaking, { ...place, isEnd: place.isEnd && run.length === steps.length });
  return { count: run.length, parts };
};

/**
 * The first steps of these that can be said in one sentence, two at least: a house that they finish, or cells that are
 * each the last of a house; undefined where the first must be said by itself.
 */
export const joinedOf = (steps: readonly Said[], board: Board, style: Style, place: Place): Joined | undefined => {
  const [first] = steps;
  if (first?.deduction.places.size !== 1) return undefined;
  const house = houseOf(first);
  const grid = house === undefined ? undefined : board.house(house)?.grid;
  const speaking: Speaking = { board, nouns: nounsFor(board, style, grid) };
  if (first.deduction.technique === "last-cell") return lastCells(steps, speaking, place);
  const [cell] = placeOf(first);
  for (const id of first.deduction.because.houses) {
    const { cells, complete } = board.house(id)!;
    const count = complete && cells.includes(cell) ? finishing(steps, id, board) : 0;
    const parts = count > 0 ? finish(steps.slice(0, count), id, speaking) : [];
    if (count > 0 && (style === "placed" || wordsIn(textOf(parts)) <= mostWords)) return { count, parts };
  }
  return undefined;
};
