import type { Place } from "../puzzle/canvas.ts";
import type { Point } from "./shape.ts";

type Corner = readonly [x: number, y: number];

/** The sides of the cells that no two of them share, clockwise round each cell: corner to corner. */
const sidesOf = (places: readonly Place[]): [Corner, Corner][] => {
  const inside = new Set(places.map(({ row, column }) => `${row},${column}`));
  const sides = ({ row: y, column: x }: Place): [neighbour: string, from: Corner, to: Corner][] => [
    [`${y - 1},${x}`, [x - 1, y - 1], [x, y - 1]],
    [`${y},${x + 1}`, [x, y - 1], [x, y]],
    [`${y + 1},${x}`, [x, y], [x - 1, y]],
    [`${y},${x - 1}`, [x - 1, y], [x - 1, y - 1]],
  ];
  return places.flatMap((place) =>
    sides(place).flatMap(([neighbour, from, to]): [Corner, Corner][] => (inside.has(neighbour) ? [] : [[from, to]])),
  );
};

/** Positive for a turn to the right, as y runs down. */
const turn = (a: Corner, b: Corner, c: Corner): number => (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);

/** The corners of each loop, straight ones left out; cells that touch at a corner only stay apart. */
const loopsOf = (sides: readonly (readonly [Corner, Corner])[]): Corner[][] => {
  const leaving = new Map<string, Corner[]>();
  for (const [from, to] of sides) leaving.set(`${from}`, [...(leaving.get(`${from}`) ?? []), to]);
  const take = (from: Corner, before?: Corner): Corner | undefined => {
    const ways = leaving.get(`${from}`) ?? [];
    const best = before ? [...ways].sort((a, b) => turn(before, from, b) - turn(before, from, a))[0] : ways[0];
    if (best) ways.splice(ways.indexOf(best), 1);
    return best;
  };
  const loops: Corner[][] = [];
  for (const [start] of sides) {
    const loop = [start];
    for (let next = take(start); next; next = take(next, loop.at(-2))) {
      if (`${next}` === `${start}`) break;
      loop.push(next);
    }
    if (loop.length > 2)
      loops.push(loop.filter((at, k) => turn(loop.at(k - 1)!, at, loop[(k + 1) % loop.length]!) !== 0));
  }
  return loops;
};

/**
 * The outline of these cells as closed loops of corners, `inset` cells inside their edge (outside where negative):
 * clockwise round them, anticlockwise round holes.
 */
export const outlineOf = (places: readonly Place[], inset = 0): Point[][] =>
  loopsOf(sidesOf(places)).map((loop) =>
    loop.map((at, k): Point => {
      const [before, after] = [loop.at(k - 1)!, loop[(k + 1) % loop.length]!];
      const way = (a: Corner, b: Corner): Point => [-Math.sign(b[1] - a[1]) * inset, Math.sign(b[0] - a[0]) * inset];
      const [first, second] = [way(before, at), way(at, after)];
      return [at[0] + first[0] + second[0], at[1] + first[1] + second[1]];
    }),
  );
