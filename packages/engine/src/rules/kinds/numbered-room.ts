import { type Digits, digitsOf, has, listOf, only } from "../../board/digits.ts";
import { inDoorway } from "../../marks/outside.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { aDigit, listed, ordinal } from "../../speech/english/counts.ts";
import { accounting, canBe, digitIn, forAll } from "../because/known-sums.ts";
import { whole } from "../bodies/fields.ts";
import { type OutsideBody, outside } from "../bodies/outside.ts";
import { type Asked, faulty, type Kind, type Setting } from "../contract.ts";
import { lineSaid, type OutsideClue, outsideClue } from "../outside-clue.ts";

interface NumberedRoomBody extends OutsideBody {
  readonly digit: number;
}
interface NumberedRoom extends OutsideClue {
  readonly digit: number;
}

const unread = -1;
const found = 0;

/** The state is the place, from 1, in which the digit must stand. */
const reading = ({ cells, digit: wanted }: NumberedRoom) => ({
  cells,
  start: unread,
  next: (read: number | string, digit: number, index: number): number | undefined => {
    const room = read === unread ? digit : Number(read);
    if (read === unread && (room < 1 || room > cells.length)) return undefined;
    if (room !== index + 1) return room;
    return digit === wanted ? found : undefined;
  },
  ok: (state: number | string): boolean => state === found,
});

/** "the fourth". */
const nth = (place: number): string => `the ${ordinal(place)}`;

/** Why the first digit can't be this one: where it would point. */
const notFirst = ({ cells, digit: wanted }: NumberedRoom, asked: Asked, digit: number): string | undefined => {
  const there = cells[digit - 1];
  if (there === undefined) return `there is no place ${digit} to point at`;
  if (digit === 1 && wanted !== 1) return "a 1 first would point at itself";
  const settled = digitIn(there, asked);
  if (settled !== undefined && settled !== wanted) return `${aDigit(digit)} first would point at the ${settled}`;
  if (digit === wanted && digit !== 1 && asked.differ(cells[0]!, there))
    return `${aDigit(digit)} first would want another ${digit} in ${nth(digit)} cell`;
  return undefined;
};

/** Why none of these digits is the first; those that would point at cells that can't be the wanted digit are told together. */
const noneFirst = (room: NumberedRoom, asked: Asked, out: Digits): string | undefined => {
  const wanted = room.digit;
  const plain = listOf(out).filter((digit) => notFirst(room, asked, digit) !== undefined);
  const blind = listOf(out).filter((digit) => !plain.includes(digit));
  if (blind.some((digit) => room.cells[digit - 1] === undefined || canBe(room.cells[digit - 1]!, wanted, asked)))
    return undefined;
  const cells = `the ${listed(blind.map(ordinal))} ${blind.length === 1 ? "cell" : "cells"}`;
  const clauses = [
    ...(plain.length > 0 ? [accounting(digitsOf(plain), (digit) => notFirst(room, asked, digit))] : []),
    ...(blind.length === 0 ? [] : [`${cells} can't be the ${wanted}`]),
  ];
  return clauses.includes(undefined) ? undefined : clauses.join(", and ");
};

/** Why the digit of the doorway can't stand in this place: the first does not point there, and it stands but once. */
const notThere = ({ cells, digit: wanted }: NumberedRoom, asked: Asked, place: number): string | undefined => {
  const [first] = cells as [Cell];
  const there = cells[place - 1]!;
  const others = listOf(asked.known(first)).flatMap((other) => (other === place ? [] : (cells[other - 1] ?? [])));
  if (others.some((other) => !asked.differ(other, there))) return undefined;
  const one = digitIn(first, asked);
  if (one !== undefined)
    return one === place ? undefined : `the first digit, ${aDigit(one)}, points at ${nth(one)} cell`;
  if (place === wanted && asked.differ(first, there))
    return `${aDigit(place)} in ${nth(place)} cell would want another one first`;
  return canBe(first, place, asked) ? undefined : `the first digit can't be the ${place} that would point there`;
};

const canStand = ({ cells, digit }: NumberedRoom, { domains }: Pick<Setting, "domains">): boolean =>
  cells.some((cell, k) => has(domains[cells[0]!]!, k + 1) && (k === 0 ? digit === 1 : has(domains[cell]!, digit)));

export const numberedRoom: Kind<NumberedRoomBody, NumberedRoom> = {
  name: "numbered-room",
  body: outside({ numbers: { digit: whole({ most: 31 }) }, from: true }),
  resolve: (body, setting) => {
    const clue = outsideClue(body, setting);
    if ("faults" in clue) return clue;
    const made = { ...clue, digit: body.digit };
    if (canStand(made, setting)) return made;
    const right = `a digit that can stand in ${lineSaid(clue.line, setting)} where the first one says`;
    return faulty({ at: ["digit"], read: String(body.digit), right });
  },
  scopes: (room) => [reading(room)],
  terms: (room) => [{ term: "automaton", owner: room.id, ...reading(room) }],
  marks: ({ stand, digit }) => inDoorway(stand, String(digit)),
  words: ({ cells, digit }) => ({
    rule: "A digit in a doorway stands in the Nth cell from its side. N is the digit in the first cell.",
    title: "Numbered rooms",
    noun: "numbered room",
    plural: "numbered rooms",
    called: `numbered room of ${digit}`,
    at: cells,
    holds: `hold the ${digit} where the first one says`,
  }),
  because: (room, asked) =>
    forAll(asked, (cell, out) => {
      const place = room.cells.indexOf(cell) + 1;
      if (place === 1) return noneFirst(room, asked, out);
      if (digitIn(room.cells[0]!, asked) === place && !has(out, room.digit))
        return `the first digit, ${aDigit(place)}, points at ${nth(place)} cell`;
      return out === only(room.digit) ? notThere(room, asked, place) : undefined;
    }),
  alsoSaid: ["numbered room", "nth"],
  relabels: "none",
};
