import type { Board, House } from "../../board/board.ts";
import { type Digits, min, only } from "../../board/digits.ts";
import { at, type Knowledge } from "../../board/knowledge.ts";
import { remembered } from "../../board/remembered.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import type { Deduction, Reasons, Technique } from "../deduction.ts";
import { type Branch, type EitherWay, eitherWayIn, eitherWays, type Forced } from "../either-way.ts";
import { leftByReasons } from "../left-by-reasons.ts";
import { addRemoval, type Gathering, gathering, removing } from "../reasons.ts";
import { gatherWhyNowhere } from "../why-not.ts";
import { placesIn } from "./only-place.ts";

const isCell = (pivot: Cell | House): pivot is Cell => typeof pivot === "number";
const forcedIn = ({ branches }: EitherWay): Forced[] => branches.flatMap(({ forced }) => forced);

/** No clue takes part: digits bar each other by sight alone. */
const isBySight = ({ branches }: EitherWay): boolean =>
  branches.every(
    ({ forced, bar }) =>
      bar?.kind === "house" &&
      forced.every(({ links }) => links.length > 0 && links.every(({ kind }) => kind === "house")),
  );

/** Whether a digit is known to lie in some cells together. */
const isGrouped = ({ from, forced }: Branch): boolean => [from, ...forced].some(({ cells }) => cells.length > 1);

/** What the trade calls it (common practice), by what its alternatives are and what follows from each. */
const nameOf = (way: EitherWay, left: readonly Digits[]): string => {
  const forced = forcedIn(way);
  const byCells = forced.every(({ by }) => by === "cell");
  const lengths = way.branches.map((branch) => branch.forced.length).sort();
  const pairs = new Set(forced.map(({ cells }) => left[cells[0]!]));
  if (!isBySight(way) || way.branches.some(isGrouped)) return "either-way";
  if (!isCell(way.pivot)) {
    const { digit } = way.branches[0]!.from;
    const isOneDigit = forced.every((node) => node.by !== "cell" && node.digit === digit) && way.digit === digit;
    if (isOneDigit) return "simple-colouring";
    const isW = byCells && lengths.join() === "1,1" && pairs.size === 1 && way.digit !== digit;
    return isW ? "w-wing" : "either-way";
  }
  if (byCells && forced.length === 3 && pairs.size === 1 && pairs.has(left[way.pivot])) return "remote-pair";
  if (byCells && lengths.join() === "1,1") return "xy-wing";
  return byCells && lengths.join() === "0,1,1" ? "xyz-wing" : "either-way";
};

const gatherPlaces = (into: Gathering, house: House, digit: number, knowledge: Knowledge, board: Board): void => {
  const places = placesIn(house, digit, knowledge);
  into.house(house.id);
  gatherWhyNowhere(
    into,
    knowledge,
    board,
    house.cells.filter((cell) => !places.includes(cell)),
    digit,
  );
};

const reasonsFor = (way: EitherWay, knowledge: Knowledge, board: Board): Reasons => {
  const because = gathering();
  if (isCell(way.pivot)) because.fact(way.pivot, at(knowledge, way.pivot));
  else gatherPlaces(because, way.pivot, way.branches[0]!.from.digit, knowledge, board);
  for (const { forced, bar } of way.branches) {
    for (const { cells, digit, by, links } of forced) {
      if (by === "cell") because.fact(cells[0]!, at(knowledge, cells[0]!));
      else gatherPlaces(because, by, digit, knowledge, board);
      for (const link of links) because.link(link);
    }
    if (bar) because.link(bar);
  }
  return because.reasons;
};

const thoughtOf = (way: EitherWay): string => {
  const pivot = isCell(way.pivot) ? way.pivot : `${way.pivot.id} ${way.branches[0]!.from.digit}`;
  const cells = forcedIn(way).flatMap(({ cells }) => cells);
  return `${pivot}: ${cells.sort((a, b) => a - b).join(" ")}`;
};

/** All of them in a state, those that are one thought (the same alternatives and cells) together. */
const deductionsIn = (knowledge: Knowledge, board: Board): Deduction[] => {
  const thoughts = new Map<string, EitherWay[]>();
  for (const way of eitherWays(board, knowledge.possible)) {
    const thought = `${nameOf(way, knowledge.possible)} ${thoughtOf(way)}`;
    thoughts.set(thought, [...(thoughts.get(thought) ?? []), way]);
  }
  return [...thoughts.values()].map((ways) => {
    const removes = new Map<Cell, Digits>();
    const because = gathering();
    for (const way of ways) {
      addRemoval(removes, way.target, only(way.digit));
      because.all(reasonsFor(way, knowledge, board));
    }
    return removing(nameOf(ways[0]!, knowledge.possible), 4, removes, because.reasons);
  });
};

const foundIn = remembered((knowledge: Knowledge) => {
  let found: readonly Deduction[] | undefined;
  return (board: Board): readonly Deduction[] => {
    found ??= deductionsIn(knowledge, board);
    return found;
  };
});

/** Whether small reasons still show the pattern of this name, for one of the digits taken out. */
const fits = (name: string, because: Reasons, removes: Deduction["removes"], board: Board): boolean => {
  const [[cell, digits]] = [...removes] as [[Cell, Digits]];
  const way = eitherWayIn(because, cell, min(digits), board);
  return way !== undefined && (name === "either-way" || nameOf(way, leftByReasons(because, board)) === name);
};

const called = (name: string): Technique => ({
  name,
  level: 4,
  looser: "either-way",
  fits: (because, board, { removes }) => fits(name, because, removes, board),
  find: (knowledge, board) => foundIn(knowledge)(board).filter(({ technique }) => technique === name),
});

/** A cell of two digits, each of which makes another cell of two the same digit. */
export const xyWing = called("xy-wing");
/** The same where the cell has that digit itself as a third. */
export const xyzWing = called("xyz-wing");
/** Two cells of one pair, one of which a house's last two places for a digit keep from it. */
export const wWing = called("w-wing");
/** One digit whose last two places in a house decide over its last two places in others. */
export const simpleColouring = called("simple-colouring");
/** Cells of one pair that see each other in a chain. */
export const remotePair = called("remote-pair");
/** Any two or three alternatives, by cells, houses and clues, that come to the same within three more digits. */
export const eitherWay = called("either-way");
