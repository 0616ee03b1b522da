import { nameOf } from "@solvewright/engine";
import { ledToFigure, soFigures, thenFigures, whatIfFigures } from "../board/conclusions.ts";
import { houseFigures } from "../board/houses.ts";
import type { Picture } from "../board/picture.ts";
import { hatchFigures } from "../board/pointers.ts";
import { ringFigures } from "../board/rings.ts";
import { placeNamed, placesNamed, placesOf } from "../board/subject.ts";
import type { Figure } from "../scene/figure.ts";
import type { LetteredReason } from "./letters.ts";
import type { Reading } from "./reading.ts";
import { relationFigures } from "./relations.ts";

const letterOfCells = (letters: readonly LetteredReason[], cell: string): string | undefined =>
  letters.find(({ of }) => "cells" in of && of.cells.includes(cell))?.letter;
const letterOfHouse = (letters: readonly LetteredReason[], house: string): string | undefined =>
  letters.find(({ of }) => "house" in of && of.house === house)?.letter;
const letterOfRule = (letters: readonly LetteredReason[], rule: string): string | undefined =>
  letters.find(({ of }) => "rule" in of && of.rule === rule)?.letter;

/** Hatched cells, one area for each letter, so that pointing at the letter can light it. */
const hatches = ({ leansOn }: Reading, letters: readonly LetteredReason[]): Figure[] =>
  [...new Set(leansOn.map((cell) => letterOfCells(letters, cell)))].flatMap((letter) =>
    hatchFigures(placesNamed(leansOn.filter((cell) => letterOfCells(letters, cell) === letter)), letter),
  );

const bands = ({ houses, leansOn, so }: Reading, { board }: Picture, letters: readonly LetteredReason[]): Figure[] => {
  if (!board) return [];
  const taken = new Set([...leansOn, ...Object.keys(so)]);
  return houses.flatMap((house) => {
    const places = placesOf(board, house);
    const figures = houseFigures(places, taken, letterOfHouse(letters, house));
    for (const place of places) taken.add(nameOf(place));
    return figures;
  });
};

const rings = ({ rules }: Reading, { clues, puzzle }: Picture, letters: readonly LetteredReason[]): Figure[] =>
  clues
    .filter(({ id }) => rules.includes(id))
    .flatMap(({ id, cells }) => {
      const of = letterOfRule(letters, id);
      return ringFigures({ figures: puzzle.filter((figure) => figure.of === id), cells, ...(of ? { of } : {}) });
    });

const digitsOf = (reading: Reading, { room, sheet }: Picture): Figure[] => {
  const each = (digits: Readonly<Record<string, number>>, draw: (name: string, digit: number) => readonly Figure[]) =>
    Object.entries(digits).flatMap(([name, digit]) => draw(name, digit));
  return [
    ...each(reading.next, (name, digit) => thenFigures(digit, placeNamed(name), room(name), sheet(name))),
    ...each(reading.so, (name, digit) => soFigures(digit, placeNamed(name), room(name))),
    ...each(reading.ledTo, (name, digit) => [ledToFigure(digit, placeNamed(name), room(name), sheet(name))]),
    ...each(reading.whatIf, (name, digit) => whatIfFigures(digit, placeNamed(name), room(name), sheet(name))),
  ];
};

/** Steps drawn: what they lean on, the houses and rules they use, what follows. Marks are drawn with those that stand. */
export const stepFigures = (picture: Picture): Figure[] => {
  const { reading, view } = picture;
  const letters = view.letters ?? [];
  return [
    ...bands(reading, picture, letters),
    ...hatches(reading, letters),
    ...rings(reading, picture, letters),
    ...reading.relations.flatMap((relation) => relationFigures(relation, "because")),
    ...reading.newRelations.flatMap((relation) => relationFigures(relation, "so")),
    ...digitsOf(reading, picture),
  ];
};
