import type { Board } from "../src/board/board.ts";
import { type Digits, listOf } from "../src/board/digits.ts";
import type { Relation, SpotFact, Step } from "../src/deduce/step.ts";
import type { Plan, PlanBeat } from "../src/order/plan.ts";
import { type Definition, definitionOf } from "../src/prove/definition.ts";
import { cellsOfRelation } from "../src/prove/form.ts";
import { prove } from "../src/prove/prove.ts";
import { needless } from "../src/prove/small.ts";

/**
 * Holds a plan, as it is published, against the laws of steps: written from the law's text, in plain sets of names, and
 * sharing nothing with the reasoning or the planner, so that a fault in either is seen here.
 */
export interface Audit {
  /** What is wrong, one sentence each. */
  readonly faults: readonly string[];
  /** Facts, recalls and marks that nobody showed the audience, one entry each. */
  readonly unshown: readonly string[];
}

type Digit = number;

interface State {
  readonly possible: Map<string, Set<Digit>>;
  readonly settled: Map<string, Digit>;
  /** Relations that steps have concluded, as text. */
  readonly related: Set<string>;
}

interface Place {
  readonly about: Definition;
  readonly board: Board;
  /** Sets of cells that may not repeat a digit, by house id or rule id. */
  readonly apart: ReadonlyMap<string, readonly (readonly string[])[]>;
  domain(cell: string): Digit[];
}

const placeOf = (board: Board): Place => {
  const about = definitionOf(board);
  const names = (cells: readonly number[]): string[] => cells.map((cell) => about.names[cell]!);
  const apart = new Map<string, (readonly string[])[]>();
  for (const [id, house] of about.houses) apart.set(id, [names(house.cells)]);
  for (const [id, rule] of about.rules)
    apart.set(
      id,
      rule.scopes.flatMap((scope) => ("different" in scope ? [names(scope.cells)] : [])),
    );
  return { about, board, apart, domain: (cell) => listOf(about.domains[about.cellOf.get(cell)!] as Digits) };
};

const sees = (place: Place, a: string, b: string): boolean =>
  a !== b && [...place.apart.values()].some((sets) => sets.some((cells) => cells.includes(a) && cells.includes(b)));

const settle = (place: Place, state: State, cell: string, digit: Digit): void => {
  state.settled.set(cell, digit);
  state.possible.set(cell, new Set([digit]));
  for (const [other, digits] of state.possible) if (sees(place, cell, other)) digits.delete(digit);
};

const begin = (place: Place): State => {
  const state: State = {
    possible: new Map(place.about.names.map((name) => [name, new Set(place.domain(name))])),
    settled: new Map(),
    related: new Set(),
  };
  for (const [cell, digit] of place.board.givens) settle(place, state, place.about.names[cell]!, digit);
  return state;
};

const isNew = (state: State, { places, removes, relates }: Step): boolean =>
  relates.some((relation) => !state.related.has(JSON.stringify(relation))) ||
  Object.keys(places).some((cell) => !state.settled.has(cell)) ||
  Object.keys(removes).length > 0;

const lawsOf = (place: Place, state: State, step: Step): string[] => {
  const faults: string[] = [];
  for (const [cell, digits] of Object.entries(step.because.facts)) {
    if ([...state.possible.get(cell)!].some((digit) => !digits.includes(digit)))
      faults.push(`fact about ${cell} is not earned`);
    if (digits.length >= place.domain(cell).length && place.domain(cell).length > 1)
      faults.push(`fact about ${cell} is its whole domain`);
  }
  for (const relation of step.because.relations)
    if (!state.related.has(JSON.stringify(relation)))
      faults.push(`${JSON.stringify(relation)} was not concluded before`);
  for (const [cell, digits] of Object.entries(step.removes))
    for (const digit of digits)
      if (!state.possible.get(cell)!.has(digit)) faults.push(`${digit} was gone from ${cell} already`);
  for (const cell of Object.keys(step.places)) if (state.settled.has(cell)) faults.push(`${cell} was settled already`);
  if (!isNew(state, step)) faults.push("nothing new");
  return faults;
};

/** `solution`: what the plan fills the grid with, which shows that a what-if's reasons can hold. */
const provedLaws = (place: Place, step: Step, solution: Readonly<Record<string, Digit>>): string[] => {
  const verdict = prove(step.assume ? { ...step, example: solution } : step, place.about);
  if (verdict.verdict !== "proved") return [`${verdict.verdict}: ${verdict.failed}`];
  const subs = (step.steps ?? []).flatMap((sub) =>
    needless(sub, place.about).map((name) => `${sub.n}: ${name} is not needed`),
  );
  if (step.assume) return [...subs, ...needless(step, place.about).map((name) => `${name} is not needed outside`)];
  return needless(step, place.about).map((name) => `${name} is not needed`);
};

const conclude = (place: Place, state: State, step: Step): void => {
  for (const [cell, digits] of Object.entries(step.removes))
    for (const digit of digits) state.possible.get(cell)!.delete(digit);
  for (const [cell, digit] of Object.entries(step.places)) settle(place, state, cell, digit);
  for (const relation of step.relates) state.related.add(JSON.stringify(relation));
};

/** The audience's board: what stands written on it. */
interface Written {
  readonly marks: Map<string, Set<Digit>>;
  readonly spots: PlanBeat["writes"]["spots"][number][];
}

const namesCell = (place: Place, spot: { house: string; cells: readonly string[] }, cell: string): boolean =>
  spot.cells.includes(cell) || !(place.apart.get(spot.house) ?? []).some((cells) => cells.includes(cell));

const noReason = { facts: {}, spots: [], relations: [], houses: [], rules: [], recalls: [], limits: [] };
const nothing = { places: {}, removes: {}, spots: [], relates: [] };

/** Whether a rule, taken by itself, forbids the digit there: nothing else demanded, all digits of the grids allowed. */
const aloneForbids = (place: Place, rule: string, cell: string, digit: Digit): boolean =>
  prove({ ...nothing, removes: { [cell]: [digit] }, because: { ...noReason, rules: [rule] } }, place.about).verdict ===
  "proved";

interface Look {
  readonly place: Place;
  readonly state: State;
  readonly written: Written;
  /** Steps of this beat so far, and those recalled. */
  readonly said: readonly Step[];
  readonly rules: readonly string[];
}

const isAccounted = ({ place, state, written, said, rules }: Look, cell: string, digit: Digit): boolean =>
  [...state.settled].some(([other, settled]) => settled === digit && sees(place, other, cell)) ||
  written.marks.get(cell)?.has(digit) === false ||
  written.spots.some((spot) => spot.digit === digit && !namesCell(place, spot, cell)) ||
  said.some(
    (step) =>
      step.removes[cell]?.includes(digit) ||
      (step.places[cell] !== undefined && step.places[cell] !== digit) ||
      step.spots.some((spot) => spot.digit === digit && !namesCell(place, spot, cell)),
  ) ||
  rules.some((rule) => aloneForbids(place, rule, cell, digit));

const isShown = (look: Look, cell: string, digits: readonly Digit[]): boolean =>
  look.state.settled.has(cell) ||
  look.place.domain(cell).every((digit) => digits.includes(digit) || isAccounted(look, cell, digit));

const isNarrower = (spot: SpotFact, { digit, house, cells }: SpotFact): boolean =>
  spot.digit === digit && spot.house === house && spot.cells.every((cell) => cells.includes(cell));

/** A digit's places: written or said, or accounted for in every other cell of a complete house. */
const isSpotShown = (look: Look, spot: SpotFact): boolean => {
  if ([...look.written.spots, ...look.said.flatMap(({ spots }) => spots)].some((other) => isNarrower(other, spot)))
    return true;
  const house = look.place.about.houses.get(spot.house);
  const cells = house?.cells.map((cell) => look.place.about.names[cell]!) ?? [];
  const others = cells.filter((cell) => !spot.cells.includes(cell));
  return (
    house !== undefined &&
    listOf(house.digits).length === cells.length &&
    others.every(
      (cell) =>
        look.state.settled.has(cell) ||
        !look.place.domain(cell).includes(spot.digit) ||
        isAccounted(look, cell, spot.digit),
    )
  );
};

/** Whether a rule, taken by itself, makes the relation hold. */
const aloneRelates = (place: Place, rule: string, relation: Relation): boolean =>
  prove({ ...nothing, relates: [relation], because: { ...noReason, rules: [rule] } }, place.about).verdict === "proved";

const isRelationShown = ({ place, state, said, rules }: Look, relation: Relation): boolean =>
  said.some(({ relates }) => relates.some((other) => JSON.stringify(other) === JSON.stringify(relation))) ||
  cellsOfRelation(relation).every((cell) => state.settled.has(cell)) ||
  rules.some((rule) => aloneRelates(place, rule, relation));

/** What a step leans on that this look does not show, by name. */
const unshownIn = (look: Look, { because }: Step): string[] => [
  ...Object.entries(because.facts).flatMap(([cell, digits]) => (isShown(look, cell, digits) ? [] : [cell])),
  ...because.spots.flatMap((spot) => (isSpotShown(look, spot) ? [] : [`${spot.digit} in ${spot.house}`])),
  ...because.relations.flatMap((relation) => (isRelationShown(look, relation) ? [] : [JSON.stringify(relation)])),
];

const factsShown = (look: Look, step: Step): boolean =>
  unshownIn({ ...look, rules: step.because.rules }, step).length === 0;

const unshownMarks = (look: Look, beat: PlanBeat): string[] => {
  const faults: string[] = [];
  for (const [cell, digits] of Object.entries(beat.writes.cells)) {
    if (!isShown(look, cell, digits)) faults.push(`beat ${beat.n}: marks in ${cell}`);
    if ([...look.state.possible.get(cell)!].some((digit) => !digits.includes(digit)))
      faults.push(`beat ${beat.n}: marks in ${cell} lack a digit`);
  }
  for (const spot of beat.writes.spots) {
    const cells = look.place.about.houses.get(spot.house)!.cells.map((cell) => look.place.about.names[cell]!);
    const others = cells.filter((cell) => !spot.cells.includes(cell));
    const fine = others.every(
      (cell) =>
        look.state.settled.has(cell) ||
        !look.place.domain(cell).includes(spot.digit) ||
        isAccounted(look, cell, spot.digit),
    );
    if (!fine) faults.push(`beat ${beat.n}: ${spot.digit} in ${spot.house}`);
  }
  return faults;
};

/** Replays a published plan: every step new, earned, proved and small; what the audience was not shown is listed. */
export const audit = (plan: Plan, board: Board, { proofs = true } = {}): Audit => {
  const place = placeOf(board);
  const state = begin(place);
  const written: Written = { marks: new Map(), spots: [] };
  const byNumber = new Map(plan.steps.map((step) => [String(step.n), step]));
  const givens = [...board.givens].map(([cell, digit]) => [place.about.names[cell]!, digit] as const);
  const solution = Object.assign(Object.fromEntries(givens), ...plan.steps.map(({ places }) => places));
  const faults: string[] = [];
  const unshown: string[] = [];
  let at = 0;
  for (const beat of plan.acts.flatMap(({ beats }) => beats)) {
    const said: Step[] = [];
    const recalled: Step[] = [];
    for (const n of beat.steps) {
      const step = byNumber.get(String(n))!;
      if (step !== plan.steps[at++]) faults.push(`step ${n} is not in its place`);
      faults.push(
        ...[...lawsOf(place, state, step), ...(proofs ? provedLaws(place, step, solution) : [])].map(
          (fault) => `step ${n} (${step.technique}): ${fault}`,
        ),
      );
      const again = step.because.recalls.map((earlier) => byNumber.get(String(earlier))!);
      if (again.length > 2) faults.push(`step ${n} recalls more than two steps`);
      const look: Look = { place, state, written, said: [...said, ...again], rules: step.because.rules };
      for (const earlier of again)
        if (Number(earlier.n) >= Number(n)) faults.push(`step ${n} recalls ${earlier.n}, which was not before it`);
      unshown.push(...unshownIn(look, step).map((what) => `step ${n}: ${what}`));
      for (const earlier of again)
        if (!factsShown({ ...look, said: [...said, ...again.filter((other) => other !== earlier)] }, earlier))
          unshown.push(`step ${n} recalls ${earlier.n}`);
      said.push(step);
      recalled.push(...again);
      conclude(place, state, step);
    }
    const spoken = [...said, ...recalled];
    unshown.push(
      ...unshownMarks(
        { place, state, written, said: spoken, rules: spoken.flatMap(({ because }) => because.rules) },
        beat,
      ),
    );
    for (const [cell, digits] of Object.entries(beat.writes.cells)) written.marks.set(cell, new Set(digits));
    for (const spot of beat.writes.spots) {
      const old = written.spots.findIndex(({ digit, house }) => digit === spot.digit && house === spot.house);
      if (old >= 0) written.spots.splice(old, 1);
      written.spots.push(spot);
    }
  }
  if (at !== plan.steps.length) faults.push("steps outside the beats");
  if (plan.solved !== (state.settled.size === place.about.names.length)) faults.push("solved is not true");
  return { faults, unshown };
};
