import type { Board } from "../board/board.ts";
import { count, type Digits, isEmpty, listOf, none, only, without } from "../board/digits.ts";
import { at, isSettled, type Knowledge, withPlaced } from "../board/knowledge.ts";
import { remembered } from "../board/remembered.ts";
import type { Cell } from "../puzzle/canvas.ts";
import type { Term } from "../terms/term.ts";
import { type Cases, casesOf } from "./cases.ts";
import { clueUnits } from "./clue-units.ts";
import type { Deduction, Technique } from "./deduction.ts";
import { follow } from "./follow.ts";
import type { Judge } from "./judge.ts";
import { addRemoval, contradicting, gathering } from "./reasons.ts";
import { shrink } from "./shrink.ts";
import { placesIn } from "./techniques/only-place.ts";
import { leftBy, reasonsOf } from "./unit.ts";
import { gatherWhyNone, gatherWhyNowhere } from "./why-not.ts";

/** A contradiction in this state, with its reasons: a cell, a house's digit or a clue that nothing is left for. */
const contradictionIn = (knowledge: Knowledge, board: Board): Deduction | undefined =>
  emptyCell(knowledge, board) ?? homelessDigit(knowledge, board) ?? brokenClue(knowledge, board);

const emptyCell = (knowledge: Knowledge, board: Board): Deduction | undefined => {
  const cell = knowledge.possible.findIndex(isEmpty);
  if (cell < 0) return undefined;
  const because = gathering();
  gatherWhyNone(because, knowledge, board, cell, board.domains[cell]!);
  return contradicting(because.reasons);
};

const homelessDigit = (knowledge: Knowledge, board: Board): Deduction | undefined => {
  for (const house of board.houses) {
    if (!house.complete) continue;
    for (const digit of listOf(house.digits)) {
      if (placesIn(house, digit, knowledge).length > 0) continue;
      const because = gathering().house(house.id);
      gatherWhyNowhere(because, knowledge, board, house.cells, digit);
      return contradicting(because.reasons);
    }
  }
  return undefined;
};

const brokenClue = (knowledge: Knowledge, board: Board): Deduction | undefined => {
  const unit = clueUnits(board).find((unit) => leftBy(unit, knowledge)?.some(isEmpty));
  return unit && contradicting(reasonsOf(unit, knowledge, board));
};

interface Attempt {
  readonly board: Board;
  readonly ladder: readonly Technique[];
  readonly judge: Judge;
  /** How many rounds of deductions before giving up. */
  readonly rounds: number;
  /** How deep what-ifs may stand within this one. */
  readonly depth: number;
  /** It stands within another: the first that does will do. */
  readonly isInner?: boolean;
}

/** Follows an assumption until something gives; the proved sub-steps that lead there, the contradiction last. */
const refutation = (outside: Knowledge, cell: Cell, digit: number, attempt: Attempt): Deduction[] | undefined =>
  follow(outside, withPlaced(outside, attempt.board, [[cell, digit]]), {
    ...attempt,
    tried: cell,
    ending: (inside) => contradictionIn(inside, attempt.board),
    emptying: (deduction, place, left) => contradicting(gathering().all(deduction.because).fact(place, left).reasons),
    stuck: (inside) =>
      attempt.depth > 0 ? whatIf(inside, { ...attempt, depth: attempt.depth - 1, isInner: true }) : undefined,
  });

/**
 * What the sub-steps lean on from outside: every house and rule, and of the facts what neither the assumption nor an
 * earlier sub-step gives.
 */
const outsideReasons = (tried: Cell, steps: readonly Deduction[], outside: Knowledge, board: Board) => {
  const because = gathering();
  const placed = new Set([tried]);
  const removed = new Map<Cell, Digits>();
  for (const step of steps) {
    for (const id of step.because.houses) because.house(id);
    for (const id of step.because.rules) because.rule(id);
    for (const [cell, digits] of step.because.facts) {
      if (placed.has(cell)) continue;
      const gone = without(without(board.domains[cell]!, digits), removed.get(cell) ?? none);
      if (isSettled(outside, cell)) because.fact(cell, at(outside, cell));
      else if (!isEmpty(gone)) because.fact(cell, without(board.domains[cell]!, gone));
    }
    for (const cell of step.places.keys()) placed.add(cell);
    for (const [cell, digits] of step.removes) addRemoval(removed, cell, digits);
  }
  return because.reasons;
};

/** All houses and clues of the board at once, for a first look at which assumptions fail. */
const wholeBoard = remembered((board: Board): Cases => {
  const houses: Term[] = board.houses.map(({ id, cells, digits, complete }) => ({
    term: "different",
    owner: id,
    cells,
    ...(complete ? { digits } : {}),
  }));
  return casesOf(
    board.domains.map((_, cell) => cell),
    [...houses, ...board.terms],
  );
});

interface Trial {
  readonly cell: Cell;
  readonly digit: number;
  /** How long the first look took to see that it fails. */
  readonly looks: number;
}

/** Assumptions that a first look at all houses and clues sees to fail, the quickest first. */
const failingTrials = (knowledge: Knowledge, board: Board): Trial[] => {
  const prober = wholeBoard(board).prober(knowledge.possible);
  const trials = knowledge.possible.flatMap((digits, cell) =>
    (isSettled(knowledge, cell) ? [] : listOf(digits)).flatMap((digit): Trial[] => {
      const { broken, looks } = prober.probe(cell, digit);
      return broken ? [{ cell, digit, looks }] : [];
    }),
  );
  return trials.sort(
    (a, b) => a.looks - b.looks || count(at(knowledge, a.cell)) - count(at(knowledge, b.cell)) || a.cell - b.cell,
  );
};

/** Whether trying digits one by one inside the assumption, and taking out those that fail, ends in nothing left. */
const failsByTrials = (start: readonly Digits[], board: Board, budget: { left: number }): boolean => {
  const possible = [...start];
  for (let changed = true; changed; ) {
    changed = false;
    const prober = wholeBoard(board).prober(possible);
    if (prober.isBroken) return true;
    for (const [cell, digits] of prober.digits.entries()) {
      possible[cell] = digits;
      if (count(digits) < 2) continue;
      for (const digit of listOf(digits)) {
        if (budget.left-- <= 0) return false;
        if (!prober.probe(cell, digit).broken) continue;
        possible[cell] = without(possible[cell]!, only(digit));
        changed = true;
      }
      if (isEmpty(possible[cell]!)) return true;
    }
  }
  return false;
};

/** Assumptions that no first look refutes but what-ifs within them do: those that settle most are tried first. */
function* nestedTrials(knowledge: Knowledge, board: Board, budget: { left: number }): Iterable<Trial> {
  const prober = wholeBoard(board).prober(knowledge.possible);
  const open = knowledge.possible.flatMap((digits, cell) =>
    (isSettled(knowledge, cell) ? [] : listOf(digits)).map((digit) => {
      const after = prober.probe(cell, digit).digits;
      return { cell, digit, after, left: after.reduce((sum, digits) => sum + count(digits), 0) };
    }),
  );
  for (const { cell, digit, after, left } of open.sort((a, b) => a.left - b.left)) {
    if (budget.left <= 0) return;
    if (failsByTrials(after, board, budget)) yield { cell, digit, looks: left };
  }
}

/** How many assumptions that fail are followed before the one with the shortest proof is taken. */
const worthComparing = 8;
const worthFollowing = 24;
const shortSteps = 3;
const nestedProbes = 8_000;

const shortest = (knowledge: Knowledge, attempt: Attempt, compare: number): Deduction | undefined => {
  const { board } = attempt;
  let best: Deduction | undefined;
  let compared = 0;
  for (const { cell, digit } of failingTrials(knowledge, board).slice(0, worthFollowing)) {
    if (compared >= compare) break;
    const steps = refutation(knowledge, cell, digit, { ...attempt, depth: 0 });
    if (!steps) continue;
    compared++;
    if (!best || steps.length < best.steps!.length) best = assumption(knowledge, board, cell, digit, steps);
  }
  return best && shrink(best, board, attempt.judge.holds);
};

/**
 * The last resort: a digit is tried in a cell, and what follows contradicts itself. The shortest of the first few that
 * fail is taken; where nothing fails by itself, what-ifs within what-ifs are tried. Undefined where all that leads
 * nowhere within a stated number of trials.
 */
export const whatIf = (knowledge: Knowledge, attempt: Attempt): Deduction | undefined => {
  const simple = shortest(knowledge, attempt, attempt.isInner ? 2 : worthComparing);
  if (simple || attempt.depth === 0) return simple;
  for (const { cell, digit } of nestedTrials(knowledge, attempt.board, { left: nestedProbes })) {
    const steps = refutation(knowledge, cell, digit, attempt);
    const found =
      steps && shrink(assumption(knowledge, attempt.board, cell, digit, steps), attempt.board, attempt.judge.holds);
    if (found) return found;
  }
  return undefined;
};

const assumption = (
  knowledge: Knowledge,
  board: Board,
  cell: Cell,
  digit: number,
  steps: readonly Deduction[],
): Deduction => {
  const isShort = steps.length <= shortSteps && steps.every(({ level }) => level <= 2);
  return {
    technique: isShort ? "what-if" : "long-what-if",
    level: isShort ? 4 : 5,
    places: new Map(),
    removes: new Map([[cell, only(digit)]]),
    spots: [],
    relates: [],
    because: outsideReasons(cell, steps, knowledge, board),
    assume: [cell, digit],
    steps,
  };
};
