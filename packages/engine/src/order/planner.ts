import type { Board } from "../board/board.ts";
import { has } from "../board/digits.ts";
import { at, countOpen, isBroken, isSettled, type Knowledge, startOf } from "../board/knowledge.ts";
import { after } from "../deduce/after.ts";
import type { Burst } from "../deduce/chain.ts";
import type { Deduction, Technique } from "../deduce/deduction.ts";
import { travel } from "../deduce/effort.ts";
import { gather } from "../deduce/gather.ts";
import type { Judge } from "../deduce/judge.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { textOf, wordsIn } from "../speech/line.ts";
import { phrase } from "../speech/phrase.ts";
import { type Costs, guessOf, wordsGuessed } from "./costs.ts";
import { type Pace, speaking } from "./pace.ts";
import { isOpenGoal, type Pool } from "./pool.ts";
import type { Gate } from "./wishes/gates.ts";

export interface Planning {
  readonly board: Board;
  readonly judge: Judge;
  readonly pool: Pool;
  /** What is looked for anew at each state, beside the pool: techniques of level 1. */
  readonly easy: readonly Technique[];
  readonly costs: Costs;
  readonly pace: Pace;
  /** What wishes leave of the ways on from a state. */
  readonly gate: Gate;
  readonly isFeatured: (step: Deduction) => boolean;
}

/** So many orders are kept side by side at each digit, and so many ways on are tried from each. */
const width = 8;
const branches = 5;
/** Of orders that have come to the same state only the best are kept, so that the beam holds different ones. */
const mostAlike = 2;

/** An order as far as it has come. */
interface Node {
  readonly knowledge: Knowledge;
  /** The same for the same state. */
  readonly key: string;
  readonly before: Node | undefined;
  /** What was found from the state before. */
  readonly foundBefore: Found | undefined;
  readonly burst: Burst;
  readonly eye: readonly Cell[];
  readonly cost: number;
  /** What the cells that are still open are taken to cost. */
  readonly rest: number;
}

/** A way on from a state: the steps, and what they cost wherever the eye comes from. */
export interface Way {
  readonly burst: Burst;
  readonly cell: Cell;
  readonly cost: number;
}

const isEasy = (burst: Burst): boolean => burst.length === 1 && burst[0]!.level === 1;
const isLastCell = (burst: Burst): boolean => isEasy(burst) && burst[0]!.technique === "last-cell";

/** "This row just needs a 4, this column a 7": so many words fewer than by itself; "3 and 5 finish this row": so many. */
const wordsOfRun = 2;
const wordsOfFinish = 6;

/** Whether two digits finish a house between them, which is said of both at once. */
const isFinish = (before: Burst, burst: Burst): boolean =>
  before[0]!.technique === "only-place" &&
  isLastCell(burst) &&
  before[0]!.because.rules.length === 0 &&
  before[0]!.because.houses.includes(burst[0]!.because.houses[0]!);

/** What it saves to say a digit in the same breath as the one before: the breath between, and some words. */
const joining = (before: Burst, { burst }: Way, way: number, { pace, costs }: Planning): number => {
  if (!isEasy(before) || !isEasy(burst)) return 0;
  const isRun = isLastCell(before) && isLastCell(burst);
  if (way > 0 && !isRun) return 0;
  const words = isRun ? wordsOfRun : isFinish(before, burst) ? wordsOfFinish : 0;
  return pace.breath + words * (speaking(1, pace) + costs.word);
};

const cellOf = (burst: Burst): Cell => [...burst.at(-1)!.places.keys()][0]!;

const wordsKnown = new WeakMap<Deduction, number>();

/** The words of a step: those of the pool are in their last form, so that theirs are counted once; others are guessed. */
const wordsOf = (step: Deduction, knowledge: Knowledge, { board, pool }: Planning): number => {
  if (!pool.has(step)) return wordsGuessed(step);
  const words = wordsKnown.get(step) ?? wordsIn(textOf(phrase(step, knowledge, board, "pointing")));
  wordsKnown.set(step, words);
  return words;
};

const costOf = (burst: Burst, from: Knowledge, planning: Planning): number => {
  const { board, costs, pace } = planning;
  let knowledge = from;
  let sum = 0;
  const said: Deduction[] = [];
  for (const [k, step] of burst.entries()) {
    sum += guessOf(step, knowledge, board, costs, wordsOf(step, knowledge, planning), pace, said);
    said.push(step);
    if (k < burst.length - 1) knowledge = after(knowledge, board, step);
  }
  return sum;
};

/** What digits that are still open are taken to cost: as the reasoning came to them, or, the easy or
 * all of them, as the last of a house at best. */
export type Hope = "as found" | "as last cells" | "all as last cells";

/** What a digit asks as the last one of its house: two seconds of words, and less than two thoughts. */
const lastCellCost = 5;

const isHoped = (burst: Burst, hope: Hope): boolean =>
  hope === "all as last cells" || (hope === "as last cells" && isEasy(burst));

/** By cell, what the reasoning's own way to it costs. */
const chainCosts = (bursts: readonly Burst[], planning: Planning, hope: Hope): ReadonlyMap<Cell, number> => {
  const costs = new Map<Cell, number>();
  let knowledge = startOf(planning.board);
  for (const burst of bursts) {
    const cost = costOf(burst, knowledge, planning);
    costs.set(cellOf(burst), isHoped(burst, hope) ? Math.min(lastCellCost, cost) : cost);
    for (const step of burst) knowledge = after(knowledge, planning.board, step);
  }
  return costs;
};

/** What has been found from a state: the ways on, the easy steps among them, and how long ago all techniques were asked. */
export interface Found {
  readonly ways: readonly Way[];
  readonly easy: readonly Deduction[];
  readonly age: number;
}

/** Looking for these costs next to nothing; the others are asked at every second digit, and what they found stays true. */
const atAGlance: readonly string[] = ["last-cell", "only-digit"];
const mostAge = 1;

const isOpen = ({ places }: Deduction, knowledge: Knowledge): boolean =>
  [...places].every(([cell, digit]) => !isSettled(knowledge, cell) && has(at(knowledge, cell), digit));

const easyFrom = (knowledge: Knowledge, before: Found | undefined, { board, easy, judge }: Planning) => {
  const isFresh = !before || before.age >= mostAge;
  const asked = isFresh ? easy : easy.filter(({ name }) => atAGlance.includes(name));
  const found = gather(knowledge, board, asked).filter((step) => !judge.isRejected(step));
  const kept = isFresh ? [] : before.easy.filter((step) => isOpen(step, knowledge));
  return { easy: [...found, ...kept], age: isFresh ? 0 : before.age + 1 };
};

/** Every way to another digit, the cheapest for each cell. */
const waysOn = (knowledge: Knowledge, before: Found | undefined, planning: Planning): Found => {
  const { pool, costs, isFeatured } = planning;
  const { easy, age } = easyFrom(knowledge, before, planning);
  const ways = new Map<Cell, Way>();
  const add = (burst: Burst): void => {
    const cell = cellOf(burst);
    const cost = costOf(burst, knowledge, planning) - (burst.some(isFeatured) ? costs.featured : 0);
    const known = ways.get(cell);
    if (!known || cost < known.cost) ways.set(cell, { burst, cell, cost });
  };
  for (const step of easy) add([step]);
  for (const goal of pool.goals) {
    const burst = isOpenGoal(goal, knowledge) ? pool.lead(goal, knowledge) : undefined;
    if (burst) add(burst);
  }
  return { ways: [...ways.values()], easy, age };
};

const stateKey = ({ possible, settled }: Knowledge): string =>
  possible.map((digits, cell) => (settled[cell] ? -digits : digits)).join();

/** A way on from an order, priced but not gone yet. */
interface Prospect extends Pick<Node, "cost" | "rest"> {
  readonly from: Node;
  readonly found: Found;
  readonly way: Way;
}

/** Puts the cheapest first; where two cost the same, the one found first. */
const byTotal = (a: Pick<Node, "cost" | "rest">, b: Pick<Node, "cost" | "rest">): number =>
  a.cost + a.rest - (b.cost + b.rest);

const gone = ({ from, found, way, cost, rest }: Prospect, board: Board): Node => {
  const knowledge = way.burst.reduce((state, step) => after(state, board, step), from.knowledge);
  const { burst, cell } = way;
  return { knowledge, key: stateKey(knowledge), before: from, foundBefore: found, burst, eye: [cell], cost, rest };
};

/** The best orders one digit on; most ways are too dear to be gone at all. */
const bestOf = (prospects: Prospect[], board: Board): Node[] => {
  const alike = new Map<string, number>();
  const best: Node[] = [];
  for (const prospect of prospects.sort(byTotal)) {
    const node = gone(prospect, board);
    const seen = alike.get(node.key) ?? 0;
    if (seen >= mostAlike || isBroken(node.knowledge)) continue;
    alike.set(node.key, seen + 1);
    best.push(node);
    if (best.length === width) break;
  }
  return best;
};

const orderOf = (node: Node): Burst[] => (node.before ? [...orderOf(node.before), node.burst] : []);

/** From an order's state. */
export type Look = (node: Pick<Node, "knowledge" | "key" | "foundBefore">) => Found;

/** Looks at each state that some order has come to only once. */
export const lookingAround = (planning: Planning): Look => {
  const known = new Map<string, Found>();
  return ({ knowledge, key, foundBefore }) => {
    const found = known.get(key) ?? waysOn(knowledge, foundBefore, planning);
    known.set(key, found);
    return found;
  };
};

/**
 * Whole orders of the pool's steps and of easy digits as they come up, the cheapest first, nothing proved anew. A beam:
 * orders with equally many digits are held against each other by what they have cost and what their open cells are
 * hoped to.
 */
export function* ordersOf(
  bursts: readonly Burst[],
  planning: Planning,
  hope: Hope,
  look: Look,
): Generator<number, Burst[][]> {
  const { board, costs, pool, gate } = planning;
  const byCell = chainCosts(bursts, planning, hope);
  const start = startOf(board);
  const rest = [...byCell.values()].reduce((sum, cost) => sum + cost, 0);
  const key = stateKey(start);
  let beam: Node[] = [
    { knowledge: start, key, before: undefined, foundBefore: undefined, burst: [], eye: [], cost: 0, rest },
  ];
  const cells = bursts.length;
  const ended: Node[] = [];
  for (let depth = 0; beam.length > 0; depth++) {
    yield depth / Math.max(1, cells);
    const prospects: Prospect[] = [];
    for (const node of beam) {
      const found = look(node);
      if (found.ways.length === 0) ended.push(node);
      const priced = gate(found.ways, node.knowledge, depth === 0).map((way): Prospect => {
        const opening = depth === 0 ? (costs.wayIn * pool.opens(way.cell)) / Math.max(1, cells) : 0;
        const far = travel(board, node.eye, [way.cell]);
        const cost = node.cost + way.cost + costs.travel * far - joining(node.burst, way, far, planning) - opening;
        return { from: node, found, way, cost, rest: node.rest - (byCell.get(way.cell) ?? 0) };
      });
      prospects.push(...priced.sort(byTotal).slice(0, branches));
    }
    beam = bestOf(prospects, board);
  }
  return ended.sort((a, b) => countOpen(a.knowledge) - countOpen(b.knowledge) || byTotal(a, b)).map(orderOf);
}
