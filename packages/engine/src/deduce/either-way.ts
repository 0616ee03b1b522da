import type { Board, House } from "../board/board.ts";
import {
  both,
  count,
  type Digits,
  digitsOf,
  either,
  has,
  isOne,
  listOf,
  min,
  none,
  only,
  without,
} from "../board/digits.ts";
import { type Link, linksBetween } from "../board/links.ts";
import type { Cell } from "../puzzle/canvas.ts";
import { clueBars } from "./clue-bars.ts";
import type { Reasons } from "./deduction.ts";
import { leftByReasons } from "./left-by-reasons.ts";

/** A digit in a cell, or in one of a few cells that share a house. */
export interface Node {
  readonly cells: readonly Cell[];
  readonly digit: number;
}

/** A digit that follows from the one before: it bars all else in the cell, or all other places in the house. */
export interface Forced extends Node {
  readonly links: readonly Link[];
  readonly by: "cell" | House;
}

/** One of the alternatives, what follows from it one after the other, and what bars the target in the end. */
export interface Branch {
  readonly from: Node;
  readonly forced: readonly Forced[];
  /** Nothing where the last digit stands in the target's own cell. */
  readonly bar?: Link;
}

/** Two or three alternatives of which one is true; whichever it is, the target can't have the digit. */
export interface EitherWay {
  /** The cell whose digits are the alternatives, or the house whose places are. */
  readonly pivot: Cell | House;
  readonly target: Cell;
  readonly digit: number;
  readonly branches: readonly Branch[];
}

/** What each cell can be, and the houses and clues that may be leaned on. */
interface World {
  readonly board: Board;
  readonly left: readonly Digits[];
  readonly houses: readonly House[];
  /** By cell, of all houses that may be leaned on those that hold it. */
  readonly housesOf: readonly (readonly House[])[];
  isListed(link: Link): boolean;
}

const worldOf = (board: Board, left: readonly Digits[], listed?: ReadonlySet<string>): World => {
  const isListed = ({ id }: { readonly id: string }): boolean => listed === undefined || listed.has(id);
  const houses = board.houses.filter(isListed);
  return {
    board,
    left,
    houses,
    housesOf: left.map((_, cell) => houses.filter(({ cells }) => cells.includes(cell))),
    isListed,
  };
};

/** By digit, through what it is barred from a cell; nothing where another digit stands in the cell itself. */
type Barred = ReadonlyMap<number, Link | undefined>;

const keyOf = ({ cells, digit }: Node): string => `${cells.join()}:${digit}`;
const linkTo = (world: World, from: Cell, to: Cell): Link | undefined =>
  linksBetween(world.board, from, to).find(world.isListed);

/** Collects by cell what is barred there, each digit with the first reason that is found. */
const barring = ({ left }: World) => {
  const barred = new Map<Cell, Map<number, Link | undefined>>();
  const add = (cell: Cell, digits: Digits, link: Link | undefined): void => {
    const known = barred.get(cell) ?? new Map<number, Link | undefined>();
    for (const gone of listOf(both(left[cell]!, digits))) if (!known.has(gone)) known.set(gone, link);
    if (known.size > 0) barred.set(cell, known);
  };
  return { barred, add };
};

/** What a digit takes out as things stand: of its own cell all others, elsewhere by sight or by a clue. */
const barredByOne = (world: World, cell: Cell, digit: number): ReadonlyMap<Cell, Barred> => {
  const { barred, add } = barring(world);
  add(cell, without(world.left[cell]!, only(digit)), undefined);
  for (const other of world.board.sees[cell]!) {
    const link = has(world.left[other]!, digit) ? linkTo(world, cell, other) : undefined;
    if (link) add(other, only(digit), link);
  }
  for (const { rule, cell: other, digits } of clueBars(world.board).get(cell * 32 + digit) ?? []) {
    const link: Link = { kind: "rule", id: rule };
    if (world.isListed(link)) add(other, digits, link);
  }
  return barred;
};

/** A digit in one of a few cells bars it from the rest of the houses that hold them all. */
const barredBySome = (world: World, { cells, digit }: Node): ReadonlyMap<Cell, Barred> => {
  const { barred, add } = barring(world);
  for (const house of world.housesOf[cells[0]!]!)
    if (cells.every((cell) => house.cells.includes(cell)))
      for (const other of house.cells)
        if (!cells.includes(other)) add(other, only(digit), { kind: "house", id: house.id });
  return barred;
};

const barredBy = (world: World, node: Node): ReadonlyMap<Cell, Barred> =>
  node.cells.length === 1 ? barredByOne(world, node.cells[0]!, node.digit) : barredBySome(world, node);

const linksOf = (barred: Iterable<Link | undefined>): Link[] => [...barred].filter((link) => link !== undefined);

/** The digit that is left for a cell. */
const leftForCells = ({ left }: World, from: Node, barred: ReadonlyMap<Cell, Barred>): Forced[] =>
  [...barred].flatMap(([cell, gone]): Forced[] => {
    const rest = without(left[cell]!, digitsOf(gone.keys()));
    if (from.cells.includes(cell) || !isOne(rest)) return [];
    return [{ cells: [cell], digit: min(rest), links: linksOf(gone.values()), by: "cell" }];
  });

const mostTogether = 3;

/** Whether so few cells lie in another house together, so that a digit in one of them bars it from there. */
const areTogether = ({ housesOf }: World, cells: readonly Cell[], house: House): boolean =>
  cells.length === 1 ||
  (cells.length <= mostTogether &&
    housesOf[cells[0]!]!.some((other) => other !== house && cells.every((cell) => other.cells.includes(cell))));

/** The places that are left in a house. */
const leftInHouses = (world: World, from: Node, barred: ReadonlyMap<Cell, Barred>): Forced[] => {
  const homes = new Map<House, Digits>();
  for (const [cell, gone] of barred)
    for (const house of world.housesOf[cell]!)
      if (house.complete) homes.set(house, either(homes.get(house) ?? none, both(house.digits, digitsOf(gone.keys()))));
  return [...homes].flatMap(([house, digits]) =>
    listOf(digits).flatMap((digit): Forced[] => {
      const places = house.cells.filter((cell) => has(world.left[cell]!, digit));
      const cells = places.filter((cell) => !barred.get(cell)?.has(digit));
      if (cells.length === 0 || !areTogether(world, cells, house)) return [];
      if (digit === from.digit && from.cells.some((cell) => cells.includes(cell))) return [];
      return [{ cells, digit, links: linksOf(places.map((place) => barred.get(place)?.get(digit))), by: house }];
    }),
  );
};

/** Single cells first: a digit in one of several is harder to hold in the head. */
const forcedBy = (world: World, from: Node, barred: ReadonlyMap<Cell, Barred>): Forced[] =>
  [...leftForCells(world, from, barred), ...leftInHouses(world, from, barred)].sort(
    (a, b) => a.cells.length - b.cells.length,
  );

/** What follows from each digit, worked out once. */
interface Follows {
  barred(node: Node): ReadonlyMap<Cell, Barred>;
  forced(node: Node): readonly Forced[];
}

const keeping = <Value>(make: (node: Node) => Value): ((node: Node) => Value) => {
  const kept = new Map<string, Value>();
  return (node) => {
    const known = kept.get(keyOf(node)) ?? make(node);
    kept.set(keyOf(node), known);
    return known;
  };
};

const followsIn = (world: World): Follows => {
  const barred = keeping((node) => barredBy(world, node));
  return { barred, forced: keeping((node) => forcedBy(world, node, barred(node))) };
};

/** No alternative is followed further than this, and all of them together no further than the second. */
const mostInBranch = 2;
const mostForced = 3;

/** By target (32 times the cell and the digit), the shortest way from an alternative to what bars it. */
const branchesFrom = (from: Node, follows: Follows): Map<number, Branch> => {
  const branches = new Map<number, Branch>();
  const reached = new Set([keyOf(from)]);
  let frontier: readonly (readonly Forced[])[] = [[]];
  for (let depth = 0; depth <= mostInBranch; depth++) {
    for (const forced of frontier)
      for (const [cell, gone] of follows.barred(forced.at(-1) ?? from))
        for (const [digit, link] of gone)
          if (!branches.has(cell * 32 + digit))
            branches.set(cell * 32 + digit, { from, forced, ...(link ? { bar: link } : {}) });
    if (depth < mostInBranch)
      frontier = frontier.flatMap((forced) =>
        follows.forced(forced.at(-1) ?? from).flatMap((next): (readonly Forced[])[] => {
          if (reached.has(keyOf(next))) return [];
          reached.add(keyOf(next));
          return [[...forced, next]];
        }),
      );
  }
  return branches;
};

const lengthOf = (branches: readonly Branch[]): number => branches.reduce((sum, { forced }) => sum + forced.length, 0);

/** How hard it is to follow: by the length first, then by a third alternative, by digits in one of several cells, and by the longest branch. */
const costOf = (branches: readonly Branch[]): number => {
  const groups = branches.flatMap(({ from, forced }) => [from, ...forced]).filter(({ cells }) => cells.length > 1);
  const longest = Math.max(...branches.map(({ forced }) => forced.length));
  return lengthOf(branches) + (branches.length - 2) * 0.5 + groups.length * 0.3 + longest * 0.1;
};

interface Alternatives {
  readonly pivot: Cell | House;
  readonly nodes: readonly Node[];
}

const mostAlternatives = 3;

/** The places in a house, taken together where they share another house: by box, by row, by column. */
const grouped = ({ housesOf }: World, house: House, places: readonly Cell[]): (readonly (readonly Cell[])[])[] => {
  const sorts = new Map<string, Map<House, Cell[]>>();
  for (const cell of places)
    for (const other of housesOf[cell]!) {
      if (other === house) continue;
      const sort = `${other.grid} ${other.shape}`;
      const groups = sorts.get(sort) ?? new Map<House, Cell[]>();
      groups.set(other, [...(groups.get(other) ?? []), cell]);
      sorts.set(sort, groups);
    }
  return [...sorts.values()]
    .map((groups) => [...groups.values()])
    .filter((groups) => groups.length < places.length && groups.flat().length === places.length)
    .filter((groups) => groups.length > 1 && groups.every((cells) => cells.length <= mostTogether));
};

const alternativesIn = (world: World): Alternatives[] => {
  const { left, houses } = world;
  const isFew = ({ nodes }: Alternatives): boolean => nodes.length > 1 && nodes.length <= mostAlternatives;
  const ofCells = left.map(
    (digits, pivot): Alternatives => ({
      pivot,
      nodes: count(digits) > mostAlternatives ? [] : listOf(digits).map((digit) => ({ cells: [pivot], digit })),
    }),
  );
  const ofHouses = houses.flatMap((house) =>
    (house.complete ? listOf(house.digits) : []).flatMap((digit): Alternatives[] => {
      const places = house.cells.filter((cell) => has(left[cell]!, digit));
      const ways = [places.map((cell) => [cell]), ...grouped(world, house, places)];
      return ways.map((groups) => ({ pivot: house, nodes: groups.map((cells) => ({ cells, digit })) }));
    }),
  );
  return [...ofCells, ...ofHouses].filter(isFew);
};

const isAmong = (nodes: readonly Node[], cell: Cell, digit: number): boolean =>
  nodes.some((node) => node.digit === digit && node.cells.includes(cell));

/** For each target the shortest way to see that it can't be; `wanted`: this one alone (32 times the cell and the digit). */
const shortest = (world: World, wanted?: number): EitherWay[] => {
  const follows = followsIn(world);
  const known = keeping((node) => branchesFrom(node, follows));
  const best = new Map<number, { cost: number; way: EitherWay }>();
  for (const { pivot, nodes } of alternativesIn(world)) {
    const [first, ...others] = nodes.map(known);
    for (const [at, branch] of first!) {
      if (wanted !== undefined && wanted !== at) continue;
      const [target, digit] = [at >> 5, at & 31];
      const rest = others.flatMap((branches) => branches.get(at) ?? []);
      if (rest.length < others.length || isAmong(nodes, target, digit)) continue;
      const branches = [branch, ...rest];
      const cost = costOf(branches);
      if (lengthOf(branches) > mostForced || cost >= (best.get(at)?.cost ?? Number.POSITIVE_INFINITY)) continue;
      best.set(at, { cost, way: { pivot, target, digit, branches } });
    }
  }
  return [...best.values()].sort((a, b) => a.cost - b.cost).map(({ way }) => way);
};

/** Everything that can be seen to be impossible either way, as things stand. */
export const eitherWays = (board: Board, left: readonly Digits[]): EitherWay[] => shortest(worldOf(board, left));

/** The same shown by reasons alone, for one target. */
export const eitherWayIn = (because: Reasons, target: Cell, digit: number, board: Board): EitherWay | undefined => {
  const world = worldOf(board, leftByReasons(because, board), new Set([...because.houses, ...because.rules]));
  return shortest(world, target * 32 + digit)[0];
};
