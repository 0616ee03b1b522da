import type { Board } from "../board/board.ts";
import { both, type Digits, has, listOf, only, without } from "../board/digits.ts";
import { at, isSettled, type Knowledge, startOf } from "../board/knowledge.ts";
import { keyOfRelated, type Related } from "../board/related.ts";
import { remembered } from "../board/remembered.ts";
import { after } from "../deduce/after.ts";
import { clueUnits, domainsOfUnit } from "../deduce/clue-units.ts";
import type { Deduction, Spot } from "../deduce/deduction.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { OrderedBeat, OrderedStep, Writes } from "./running-order.ts";

/** Something that is leaned on or written although nothing shows the audience why. */
interface Missing {
  /** Index of the beat. */
  readonly beat: number;
  /** The fact, mark, relation or recall that it belongs to, for counting: one each. */
  readonly of: string;
}

/** A digit that a fact or a mark leaves out; `step` is the index, in the whole order, of the one that leans on it, which a mark lacks. */
interface MissingDigit extends Missing {
  readonly missing: "digit";
  readonly step?: number;
  readonly cell: Cell;
  readonly digit: number;
}

interface MissingRelation extends Missing {
  readonly missing: "relation";
  readonly step: number;
  readonly related: Related;
}

/** A step that is recalled while its own reasons are not to be seen. */
interface MissingRecall extends Missing {
  readonly missing: "recall";
}

export type Unshown = MissingDigit | MissingRelation | MissingRecall;

/** What the audience has before it: settled digits and the marks that stand. */
interface View {
  readonly knowledge: Knowledge;
  readonly marks: ReadonlyMap<Cell, Digits>;
  readonly spots: readonly Spot[];
}

const isSeen = (board: Board, knowledge: Knowledge, cell: Cell, digit: number): boolean =>
  board.sees[cell]!.some((other) => isSettled(knowledge, other) && at(knowledge, other) === only(digit));

/** The cells of each house and no-repeat rule by id, for spot marks. */
const cellsOfName = (board: Board, id: string): readonly Cell[] =>
  board.house(id)?.cells ?? board.groups.find(({ rule }) => rule === id)?.cells ?? [];

const spotBars = (board: Board, { house, cells, digit: of }: Spot, cell: Cell, digit: number): boolean =>
  of === digit && !cells.includes(cell) && cellsOfName(board, house).includes(cell);

/** What each clue by itself leaves of its cells' digits, whatever else is known; by rule id, worked out when asked for. */
const aloneOf = remembered((board: Board): ((rule: string) => ReadonlyMap<Cell, Digits>) => {
  const known = new Map<string, ReadonlyMap<Cell, Digits>>();
  return (rule) => {
    const left = known.get(rule) ?? leftAlone(board, rule);
    known.set(rule, left);
    return left;
  };
});

const leftAlone = (board: Board, rule: string): ReadonlyMap<Cell, Digits> => {
  const left = new Map<Cell, Digits>();
  for (const unit of clueUnits(board).filter((unit) => unit.rules[0] === rule)) {
    const digits = unit.alone.possible(domainsOfUnit(board, unit)) ?? domainsOfUnit(board, unit);
    for (const [k, cell] of unit.cells.entries()) left.set(cell, both(left.get(cell) ?? digits[k]!, digits[k]!));
  }
  return left;
};

/** Whether the clue by itself keeps the digit out of the cell. */
const isBarredAlone = (board: Board, rule: string, cell: Cell, digit: number): boolean => {
  const left = aloneOf(board)(rule).get(cell);
  return left !== undefined && !has(left, digit);
};

/** Who may be taken as having said something: the steps of this beat so far and those that the step recalls. */
const isSaid = (board: Board, said: readonly Deduction[], cell: Cell, digit: number): boolean =>
  said.some(
    ({ places, removes, spots }) =>
      has(removes.get(cell) ?? (0 as Digits), digit) ||
      (places.has(cell) && places.get(cell) !== digit) ||
      spots.some((spot) => spotBars(board, spot, cell, digit)),
  );

/** Whether the audience can account for the digit's being gone from the cell. */
const isAccounted = (
  board: Board,
  view: View,
  said: readonly Deduction[],
  rules: readonly string[],
  cell: Cell,
  digit: number,
): boolean =>
  isSeen(board, view.knowledge, cell, digit) ||
  (view.marks.has(cell) && !has(view.marks.get(cell)!, digit)) ||
  view.spots.some((spot) => spotBars(board, spot, cell, digit)) ||
  isSaid(board, said, cell, digit) ||
  rules.some((rule) => isBarredAlone(board, rule, cell, digit));

/** The digits left out by a fact that nothing accounts for. */
const unaccounted = (
  board: Board,
  view: View,
  said: readonly Deduction[],
  rules: readonly string[],
  cell: Cell,
  digits: Digits,
): number[] =>
  isSettled(view.knowledge, cell)
    ? []
    : listOf(without(board.domains[cell]!, digits)).filter(
        (digit) => !isAccounted(board, view, said, rules, cell, digit),
      );

const isRelationSaid = (view: View, said: readonly Deduction[], related: Related): boolean =>
  related.cells.every((cell) => isSettled(view.knowledge, cell)) ||
  said.some(({ relates }) => relates.some((other) => keyOfRelated(other) === keyOfRelated(related)));

const isOnBoard = (board: Board, view: View, said: readonly Deduction[], { because }: Deduction): boolean =>
  because.relations.every((related) => isRelationSaid(view, said, related)) &&
  [...because.facts].every(
    ([cell, digits]) => unaccounted(board, view, said, because.rules, cell, digits).length === 0,
  );

/** The cells that a step says something of. */
const concludedIn = ({ places, removes, relates }: Deduction): Cell[] => [
  ...new Set([...places.keys(), ...removes.keys(), ...relates.flatMap(({ cells }) => cells)]),
];

/** What a replay may be asked about at a moment: used by the planner to choose between marks and recalls. */
export interface Moment {
  /** Whether all facts of an earlier step are shown now, so that it may be recalled. */
  canRecall(deduction: Deduction): boolean;
  isAccountedFor(cell: Cell, digit: number): boolean;
  readonly knowledge: Knowledge;
}

export interface Witness {
  unshown?(what: Unshown, moment: Moment): void;
  /** Called when all steps of a beat are done; the marks to write, where they are not those of the beat. */
  beatEnds?(beat: number, moment: Moment): Writes | undefined;
}

/**
 * Replays a running order with the audience's eyes (the audience rule): each step may lean only on settled digits,
 * standing marks, what is said in the same beat or recalled, and what one listed clue says by itself.
 * Tells the witness about each digit left out that nobody showed.
 */
export const replay = (board: Board, beats: readonly OrderedBeat[], witness: Witness): void => {
  const all: readonly OrderedStep[] = beats.flatMap(({ steps }) => steps);
  let view: View = { knowledge: startOf(board), marks: new Map(), spots: [] };
  let index = 0;
  for (const [beat, { steps, writes: planned }] of beats.entries()) {
    const said: Deduction[] = [];
    const momentOf = (spoken: readonly Deduction[], rules: readonly string[]): Moment => ({
      knowledge: view.knowledge,
      canRecall: (deduction) => isOnBoard(board, view, spoken, deduction),
      isAccountedFor: (cell, digit) => isAccounted(board, view, spoken, rules, cell, digit),
    });
    const recalled: Deduction[] = [];
    for (const { deduction, recalls } of steps) {
      const { because } = deduction;
      const again = recalls.map((earlier) => all[earlier]!.deduction);
      const spoken = [...said, ...again];
      for (const related of because.relations)
        if (!isRelationSaid(view, spoken, related))
          witness.unshown?.(
            { missing: "relation", beat, step: index, related, of: `step ${index} ${keyOfRelated(related)}` },
            momentOf(spoken, because.rules),
          );
      for (const [cell, digits] of because.facts)
        for (const digit of unaccounted(board, view, spoken, because.rules, cell, digits))
          witness.unshown?.(
            { missing: "digit", beat, step: index, cell, digit, of: `step ${index} ${cell}` },
            momentOf(spoken, because.rules),
          );
      for (const deduction of again)
        if (!isOnBoard(board, view, [...said, ...again.filter((other) => other !== deduction)], deduction))
          for (const cell of concludedIn(deduction))
            witness.unshown?.({ missing: "recall", beat, of: `recall ${index} ${cell}` }, momentOf(spoken, []));
      said.push(deduction);
      recalled.push(...again);
      view = { ...view, knowledge: after(view.knowledge, board, deduction) };
      index++;
    }
    const rules = [...said, ...recalled].flatMap(({ because }) => because.rules);
    const spoken = [...said, ...recalled];
    const writes = witness.beatEnds?.(beat, momentOf(spoken, rules)) ?? planned;
    for (const [cell, digits] of writes.cells)
      for (const digit of unaccounted(board, view, spoken, rules, cell, digits))
        witness.unshown?.({ missing: "digit", beat, cell, digit, of: `mark ${beat} ${cell}` }, momentOf(spoken, rules));
    for (const { digit, house, cells } of writes.spots)
      for (const cell of cellsOfName(board, house))
        if (
          !cells.includes(cell) &&
          !isSettled(view.knowledge, cell) &&
          has(board.domains[cell]!, digit) &&
          !isAccounted(board, view, spoken, rules, cell, digit)
        )
          witness.unshown?.(
            { missing: "digit", beat, cell, digit, of: `spot ${beat} ${house} ${digit}` },
            momentOf(spoken, rules),
          );
    view = written(view, writes.cells, writes.spots);
  }
};

const written = (view: View, cells: ReadonlyMap<Cell, Digits>, spots: readonly Spot[]): View => ({
  knowledge: view.knowledge,
  marks: new Map([...view.marks, ...cells]),
  spots: [
    ...view.spots.filter((old) => !spots.some((spot) => spot.digit === old.digit && spot.house === old.house)),
    ...spots,
  ],
});

/** How many facts, recalls and marks nobody showed; the number to reach is 0. */
export const countUnshown = (board: Board, beats: readonly OrderedBeat[]): number => {
  const of = new Set<string>();
  replay(board, beats, { unshown: (what) => of.add(what.of) });
  return of.size;
};
