import type { Board, House } from "../board/board.ts";
import { count, type Digits, has, listOf, only, without } from "../board/digits.ts";
import { at, isSettled } from "../board/knowledge.ts";
import { keyOfRelated, type Related } from "../board/related.ts";
import type { Deduction, Spot } from "../deduce/deduction.ts";
import { placesIn } from "../deduce/techniques/only-place.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { countUnshown, type Moment, replay } from "./audience.ts";
import { noWrites, type OrderedBeat, type Writes } from "./running-order.ts";

/** What an audience must be shown of a beat's removals because somebody leans on it later: cells with digits gone. */
type Wanted = Map<Cell, Digits>;

/** Marks cost the time to write them and clutter; four in a cell are already hard to read. */
const cellMarkCost = (digits: Digits): number => [0, 1, 1, 1.5, 4, 8][Math.min(count(digits), 5)]!;
const spotCost = (cells: readonly Cell[]): number => cells.length * 0.6;
const mostPlaces = 3;

const canBeShown = (moment: Moment, board: Board, cells: readonly Cell[], digit: number): boolean =>
  cells.every(
    (cell) =>
      isSettled(moment.knowledge, cell) || !has(board.domains[cell]!, digit) || moment.isAccountedFor(cell, digit),
  );

/** Spot marks that would account for the digit's being gone from the cell. */
const spotsFor = (moment: Moment, board: Board, cell: Cell, digit: number): Spot[] =>
  board.houses.flatMap((house: House): Spot[] => {
    if (!house.complete || !house.cells.includes(cell)) return [];
    const places = placesIn(house, digit, moment.knowledge);
    const isFit =
      places.length >= 2 && places.length <= mostPlaces && places.every((place) => !isSettled(moment.knowledge, place));
    const others = house.cells.filter((other) => !places.includes(other));
    return isFit && canBeShown(moment, board, others, digit) ? [{ digit, cells: places, house: house.id }] : [];
  });

interface Choice {
  readonly cost: number;
  readonly covers: readonly (readonly [Cell, number])[];
  readonly cell?: Cell;
  readonly spot?: Spot;
}

const choicesFor = (wanted: Wanted, moment: Moment, board: Board): Choice[] => {
  const pairs = [...wanted].flatMap(([cell, digits]) => listOf(digits).map((digit) => [cell, digit] as const));
  const spots = new Map(
    pairs
      .flatMap(([cell, digit]) => spotsFor(moment, board, cell, digit))
      .map((spot) => [`${spot.house} ${spot.digit}`, spot]),
  );
  const bySpot = [...spots.values()].map((spot): Choice => {
    const house = board.house(spot.house)!;
    return {
      spot,
      cost: spotCost(spot.cells),
      covers: pairs.filter(([cell, digit]) => digit === spot.digit && house.cells.includes(cell)),
    };
  });
  const byCell = [...wanted.keys()].map(
    (cell): Choice => ({
      cell,
      cost: cellMarkCost(at(moment.knowledge, cell)),
      covers: pairs.filter(([other]) => other === cell),
    }),
  );
  return [...bySpot, ...byCell];
};

/** The cheapest marks that show what is wanted: those that show most for their cost first. */
const marksFor = (wanted: Wanted, moment: Moment, board: Board): Writes => {
  const open = new Map([...wanted].filter(([cell]) => !isSettled(moment.knowledge, cell)));
  const cells = new Map<Cell, Digits>();
  const spots: Spot[] = [];
  while (open.size > 0) {
    const [best] = choicesFor(open, moment, board).sort((a, b) => a.cost / a.covers.length - b.cost / b.covers.length);
    if (best!.spot) spots.push(best!.spot);
    else cells.set(best!.cell!, at(moment.knowledge, best!.cell!));
    for (const [cell, digit] of best!.covers) {
      const rest = without(open.get(cell)!, only(digit));
      if (rest === 0) open.delete(cell);
      else open.set(cell, rest);
    }
  }
  return { cells, spots };
};

interface Draft {
  readonly steps: readonly { readonly deduction: Deduction; readonly recalls: number[] }[];
  readonly wanted: Wanted;
}

/** The place in the order, from 0, of the step that concluded the relation. */
const relaters = (beats: readonly Draft[]): ((related: Related) => number | undefined) => {
  const found = new Map<string, number>();
  for (const [step, { deduction }] of beats.flatMap(({ steps }) => steps).entries())
    for (const related of deduction.relates)
      if (!found.has(keyOfRelated(related))) found.set(keyOfRelated(related), step);
  return (related) => found.get(keyOfRelated(related));
};

/** The place in the order, from 0, of the step that took the digit out of the cell. */
const removers = (
  beats: readonly Draft[],
): ((cell: Cell, digit: number) => { beat: number; step: number } | undefined) => {
  const found = new Map<number, { beat: number; step: number }>();
  let step = 0;
  for (const [beat, { steps }] of beats.entries())
    for (const { deduction } of steps) {
      for (const [cell, digits] of deduction.removes)
        for (const digit of listOf(digits))
          if (!found.has(cell * 32 + digit)) found.set(cell * 32 + digit, { beat, step });
      step++;
    }
  return (cell, digit) => found.get(cell * 32 + digit);
};

const want = (beat: Draft, cell: Cell, digit: number): boolean => {
  const before = beat.wanted.get(cell) ?? (0 as Digits);
  if (has(before, digit)) return false;
  beat.wanted.set(cell, (before | only(digit)) as Digits);
  return true;
};

const withMarks = (beats: readonly Draft[], board: Board): OrderedBeat[] => {
  const bare = beats.map(({ steps }): OrderedBeat => ({ steps, writes: noWrites }));
  const writes: Writes[] = [];
  replay(board, bare, {
    beatEnds: (beat, moment) => {
      writes.push(marksFor(beats[beat]!.wanted, moment, board));
      return writes.at(-1);
    },
  });
  return bare.map(({ steps }, k) => ({ steps, writes: writes[k]! }));
};

const stepAt = (drafts: readonly Draft[], index: number) => drafts.flatMap(({ steps }) => steps)[index]!;

const mostRecalls = 2;
/** So many digits in a cell are not written down; the reason is said again instead. */
const tooManyMarks = 5;

const isBetterRecalled = (moment: Moment, board: Board, cell: Cell, digit: number, earlier: Deduction): boolean =>
  !earlier.assume &&
  count(at(moment.knowledge, cell)) >= tooManyMarks &&
  spotsFor(moment, board, cell, digit).length === 0 &&
  moment.canRecall(earlier);

const withoutRecalls = (beat: OrderedBeat): OrderedBeat[] =>
  beat.steps.flatMap((step) =>
    step.recalls.map((dropped) => {
      const fewer = { ...step, recalls: step.recalls.filter((earlier) => earlier !== dropped) };
      return { ...beat, steps: beat.steps.map((other) => (other === step ? fewer : other)) };
    }),
  );

const withoutMarks = (beat: OrderedBeat): OrderedBeat[] => {
  const { cells, spots } = beat.writes;
  return [
    ...[...cells.keys()].map((dropped) => ({
      ...beat,
      writes: { spots, cells: new Map([...cells].filter(([cell]) => cell !== dropped)) },
    })),
    ...spots.map((dropped) => ({ ...beat, writes: { cells, spots: spots.filter((spot) => spot !== dropped) } })),
  ];
};

/** What was added later may show what a step was going to recall, or a beat to write: such things fall away again. */
const withoutSpares = (
  beats: OrderedBeat[],
  board: Board,
  ways: (beat: OrderedBeat) => readonly OrderedBeat[],
): OrderedBeat[] => {
  const unshown = countUnshown(board, beats);
  let kept = beats;
  for (let k = 0; k < kept.length; ) {
    const fewer = ways(kept[k]!)
      .map((beat) => kept.with(k, beat))
      .find((order) => countUnshown(board, order) <= unshown);
    if (fewer) kept = fewer;
    else k++;
  }
  return kept;
};

/**
 * Adds to each beat the marks that later beats lean on, so that nothing is used that nobody has seen: whatever is
 * missing in a replay is marked where it was found, until nothing is missing. `most`: how many
 * earlier steps a step may recall, where that is not two.
 */
export const marked = (
  board: Board,
  beats: readonly (readonly Deduction[])[],
  most: ReadonlyMap<Deduction, number> = new Map(),
): OrderedBeat[] => {
  const drafts: Draft[] = beats.map((steps) => ({
    steps: steps.map((deduction) => ({ deduction, recalls: [] })),
    wanted: new Map(),
  }));
  const removerOf = removers(drafts);
  const relaterOf = relaters(drafts);
  for (;;) {
    const ordered = withMarks(drafts, board);
    let changed = false;
    replay(board, ordered, {
      unshown: (what, moment) => {
        if (what.missing === "recall") return;
        if (what.missing === "relation") {
          // A relation can't be written down: it is said again.
          const [consumer, said] = [stepAt(drafts, what.step), relaterOf(what.related)];
          if (said === undefined || said >= what.step || consumer.recalls.includes(said)) return;
          consumer.recalls.push(said);
          changed = true;
          return;
        }
        const { beat, step, cell, digit } = what;
        const source = removerOf(cell, digit);
        if (!source || source.beat > beat) return;
        const consumer = step === undefined ? undefined : stepAt(drafts, step);
        const isRecalled = consumer?.recalls.includes(source.step) ?? false;
        if (
          consumer &&
          !isRecalled &&
          consumer.recalls.length < (most.get(consumer.deduction) ?? mostRecalls) &&
          isBetterRecalled(moment, board, cell, digit, stepAt(drafts, source.step).deduction)
        ) {
          consumer.recalls.push(source.step);
          changed = true;
        } else if (!isRecalled && want(drafts[source.beat]!, cell, digit)) changed = true;
      },
    });
    if (!changed) return withoutSpares(withoutSpares(ordered, board, withoutRecalls), board, withoutMarks);
  }
};
