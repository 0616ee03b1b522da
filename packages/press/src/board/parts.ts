import type { Figure } from "../scene/figure.ts";
import { stepFigures } from "../step/step-figures.ts";
import { cellMarkFigures } from "./cell-marks.ts";
import { clashFigures, leapFigures, narrowedFigure, slipFigures } from "./conclusions.ts";
import { digitFigure, givenFigures, settledFigure } from "./digits.ts";
import type { Picture } from "./picture.ts";
import { differFigures, focusFigures, pointingFigures, veilFigures, type Wash, washFigures } from "./pointers.ts";
import { ringFigures } from "./rings.ts";
import { spotMarkFigures, spotsByCell } from "./spot-marks.ts";
import { placeNamed, placesNamed } from "./subject.ts";

type Part = (picture: Picture) => readonly Figure[];

/** A whole solution has the givens in it as well: each stands there already. */
const givenNames = ({ subject: { puzzle } }: Picture): ReadonlySet<string> =>
  new Set([...puzzle.givens.keys()].map((cell) => puzzle.canvas.names[cell]!));

const givens: Part = ({ subject, room, sheet }) =>
  [...subject.puzzle.givens].flatMap(([cell, digit]) => {
    const name = subject.puzzle.canvas.names[cell]!;
    return givenFigures(digit, placeNamed(name), room(name), sheet(name));
  });

/** Cells whose digit is drawn by the step, so that nothing else stands in them. */
const concluded = ({ reading: { so, next, whatIf } }: Picture) => ({ ...so, ...next, ...whatIf });

const settled: Part = (picture) => {
  const { view, room, sheet } = picture;
  const { written, differ = [] } = view;
  const taken = concluded(picture);
  const given = givenNames(picture);
  return Object.entries(written?.settled ?? {}).flatMap(([name, digit]) => {
    if (name in taken || given.has(name)) return [];
    const [place, free, ground] = [placeNamed(name), room(name), sheet(name)];
    if (differ.length === 0) return [settledFigure(digit, place, free, ground)];
    const look = differ.includes(name)
      ? { weight: 800, fill: "ink" as const }
      : { weight: 480, fill: "pencil" as const, opacity: 0.45 };
    return [digitFigure(digit, place, free, { ...look, ground })];
  });
};

const ascending = (digits: readonly number[]): number[] => [...new Set(digits)].sort((a, b) => a - b);

/** What is taken out of a cell where nothing stood can be shown as struck marks only while it is little. */
const fewest = 3;

const cellMarksOf = (name: string, { view, reading }: Picture): readonly Figure[] => {
  const place = placeNamed(name);
  const [standing, struck] = [view.written?.marks?.[name] ?? [], reading.struck[name] ?? []];
  const fresh = reading.newMarks[name];
  if (standing.length > 0) return cellMarkFigures(place, ascending([...standing, ...struck]), { struck });
  if (fresh) return cellMarkFigures(place, ascending(fresh), { isNew: true });
  return struck.length > fewest ? [narrowedFigure(place)] : cellMarkFigures(place, ascending(struck), { struck });
};

const cellMarks: Part = (picture) => {
  const { view, reading } = picture;
  const taken = { ...view.written?.settled, ...concluded(picture) };
  const names = [view.written?.marks ?? {}, reading.struck, reading.newMarks].flatMap(Object.keys);
  return [...new Set(names)].filter((name) => !(name in taken)).flatMap((name) => cellMarksOf(name, picture));
};

const spotMarks: Part = (picture) => {
  const { board, view, reading, room } = picture;
  const isFresh = (digit: number, house: string): boolean =>
    reading.newSpots.some((spot) => spot.digit === digit && spot.house === house);
  const standing = (view.written?.spots ?? []).filter(({ digit, house }) => !isFresh(digit, house));
  const [old, now] = [spotsByCell(board, standing), spotsByCell(board, reading.newSpots, true)];
  const taken = { ...view.written?.settled, ...concluded(picture) };
  return [...new Set([...old.keys(), ...now.keys()])]
    .filter((name) => !(name in taken))
    .flatMap((name) => {
      const marks = [...(old.get(name) ?? []), ...(now.get(name) ?? [])];
      return spotMarkFigures(placeNamed(name), marks, room(name));
    });
};

const shading: Part = ({ view }) =>
  Object.entries(view.shading ?? {}).flatMap(([wash, cells]) => washFigures(wash as Wash, placesNamed(cells)));

const differences: Part = ({ view }) => differFigures(placesNamed(view.differ ?? []));

const ringed: Part = ({ view, clues, puzzle }) =>
  clues
    .filter(({ id }) => view.ringed?.includes(id))
    .flatMap(({ id, cells }) => ringFigures({ figures: puzzle.filter(({ of }) => of === id), cells, of: id }));

const review: Part = ({ view: { slips = [], leaps = [], clashes = [] } }) => [
  ...placesNamed(slips).flatMap(slipFigures),
  ...placesNamed(leaps).flatMap(leapFigures),
  ...placesNamed(clashes).flatMap(clashFigures),
];

const chosen: Part = ({ view }) => focusFigures(placesNamed(view.chosen ?? []));

const lens: Part = ({ subject, view, extent, ground }) => {
  const index = subject.puzzle.grids.findIndex(({ id }) => id === view.lens);
  if (index < 0) return [];
  const { places, grids } = subject.puzzle.canvas;
  return veilFigures(
    places.filter((_, cell) => grids[cell]!.includes(index)),
    extent,
    ground,
    0.8,
    0.04,
  );
};

const pointing: Part = ({ view, extent, ground }) =>
  view.pointing ? pointingFigures(placesNamed(view.pointing), extent, ground) : [];

const coordinates: Part = ({ subject: { puzzle }, view, extent }) => {
  if (!view.coordinates) return [];
  const number = (text: number, x: number, y: number): Figure => ({
    shape: "text",
    layer: "letter",
    at: [x, y + 0.09],
    text: String(text),
    size: 0.26,
    weight: 500,
    face: "desk",
    fill: "ink-3",
  });
  const { rows, columns } = puzzle.canvas;
  return [
    ...Array.from({ length: rows }, (_, k) => number(k + 1, extent.left - 0.12, k + 0.5)),
    ...Array.from({ length: columns }, (_, k) => number(k + 1, k + 0.5, extent.top - 0.12)),
  ];
};

const step: Part = (picture) => stepFigures(picture);

/** Everything that can stand in a picture of a board; the layers decide what lies on what. */
export const parts: readonly Part[] = [
  ({ puzzle }) => puzzle,
  shading,
  differences,
  givens,
  settled,
  cellMarks,
  spotMarks,
  step,
  ringed,
  review,
  chosen,
  lens,
  pointing,
  coordinates,
];
