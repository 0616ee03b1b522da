import { type Digits, listOf } from "../../board/digits.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import { aDigit, counted } from "../../speech/english/counts.ts";
import type { Asked } from "../contract.ts";
import { assuming, byOddness, digitIn, forAll, knownSums, oddness } from "./known-sums.ts";

/** Cells that add up to as much as others, and how they are spoken of. */
export interface Side {
  readonly cells: readonly Cell[];
  /** "the circle is", "the digits along it make": what stands before a number. */
  readonly makes: string;
  /** What the others make, where one of its cells is spoken of: "the other two along it make". */
  rest(many: number): string;
}

const bounds = (cells: readonly Cell[], asked: Asked): readonly [number, number] | undefined => {
  const sums = knownSums(cells, asked);
  return sums.length === 0 ? undefined : [sums[0]!, sums.at(-1)!];
};

/** "The other one along it is", "the other two along it make". */
export const othersThat =
  (within: string) =>
  (many: number): string =>
    `${many === 1 ? "the other one" : `the other ${counted(many)}`} ${within} ${many === 1 ? "is" : "make"}`;

/** What is too much or too little, by the least and the most of the far side and of the cell's own. */
const byBounds = (near: Side, far: Side, cell: Cell, out: Digits, asked: Asked): string | undefined => {
  const rest = near.cells.filter((other) => other !== cell);
  const [own, theirs] = [rest.length === 0 ? ([0, 0] as const) : bounds(rest, asked), bounds(far.cells, asked)];
  if (!own || !theirs) return undefined;
  const digits = listOf(out);
  const isBig = (digit: number): boolean => digit + own[0] > theirs[1];
  const isSmall = (digit: number): boolean => digit + own[1] < theirs[0];
  if (!digits.every((digit) => isBig(digit) || isSmall(digit))) return undefined;
  const rangeOf = ([least, most]: readonly [number, number]): string => {
    if (least === most) return `${least}`;
    if (digits.every(isBig)) return "";
    return digits.every(isSmall) ? "" : `${least} to ${most}`;
  };
  const isAllBig = digits.every(isBig);
  const there = rangeOf(theirs) || (isAllBig ? `at most ${theirs[1]}` : `at least ${theirs[0]}`);
  const here = rangeOf(own) || (isAllBig ? `at least ${own[0]}` : `at most ${own[1]}`);
  const first = `${far.makes} ${there}`;
  return rest.length === 0 ? first : `${first}, and ${near.rest(rest.length)} ${here}`;
};

/** One digit, tried: the two sides can't meet. */
const byEach = (near: Side, far: Side, cell: Cell, out: Digits, asked: Asked): string | undefined => {
  const [digit, another] = listOf(out);
  if (digit === undefined || another !== undefined) return undefined;
  const then = assuming(asked, cell, digit);
  const [own, theirs] = [bounds(near.cells, then), bounds(far.cells, then)];
  if (!own || !theirs) return undefined;
  if (own[0] > theirs[1]) return `with ${aDigit(digit)}, ${far.makes} at most ${theirs[1]}, which is too little`;
  if (own[1] < theirs[0]) return `with ${aDigit(digit)}, ${far.makes} at least ${theirs[0]}, which is too much`;
  return undefined;
};

const byParity = (near: Side, far: Side, cell: Cell, out: Digits, asked: Asked): string | undefined => {
  const odd = oddness(
    [...near.cells, ...far.cells].filter((other) => other !== cell),
    asked,
  );
  return odd === undefined ? undefined : byOddness(odd, out);
};

/** One other open cell: the digit that each would need there. */
const byPartner = (sides: readonly [Side, Side], cell: Cell, out: Digits, asked: Asked): string | undefined => {
  const open = sides
    .flatMap(({ cells }) => cells)
    .filter((other) => other !== cell && digitIn(other, asked) === undefined);
  const [partner] = open;
  if (open.length !== 1 || partner === undefined || listOf(out).length > 2) return undefined;
  const leadOf = (digit: number): number => {
    const sum = ({ cells }: Side): number =>
      cells.reduce((all, other) => all + (other === cell ? digit : (digitIn(other, asked) ?? 0)), 0);
    const [near, far] = sides[0].cells.includes(cell) ? sides : [sides[1], sides[0]];
    return near.cells.includes(partner) ? sum(far) - sum(near) : sum(near) - sum(far);
  };
  const needs = listOf(out).map((digit) => [digit, leadOf(digit)] as const);
  const isLeft = ([digit, need]: readonly [number, number]): boolean =>
    need < 0 || ((assuming(asked, cell, digit).known(partner) >>> need) & 1) === 1;
  if (needs.some(isLeft)) return undefined;
  const said = needs.map(([digit, need]) => `${aDigit(digit)} would need ${need === digit ? "another" : aDigit(need)}`);
  return `${said.join(" and ")} in the other open cell, which can't be`;
};

/** Why two sides of one sum rule digits out of a cell of theirs. */
export const becauseOfBalance = (pairs: readonly (readonly [Side, Side])[], asked: Asked): string | undefined =>
  forAll(asked, (cell, out) => {
    for (const [first, second] of pairs) {
      const [near, far] = first.cells.includes(cell) ? [first, second] : [second, first];
      if (!near.cells.includes(cell) || far.cells.includes(cell)) continue;
      const said =
        byBounds(near, far, cell, out, asked) ??
        byPartner([near, far], cell, out, asked) ??
        byEach(near, far, cell, out, asked) ??
        byParity(near, far, cell, out, asked);
      if (said !== undefined) return said;
    }
    return undefined;
  });
