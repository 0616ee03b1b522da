import type { Filled } from "./kind-cases.ts";
import type { Random } from "./random.ts";

const boxOf = (size: number): readonly [number, number] => (size === 4 ? [2, 2] : [2, 3]);
const range = (size: number): number[] => Array.from({ length: size }, (_, k) => k);

/** The digits, row by row, of a grid of 4 or 6 with its boxes: rows shifted so that boxes hold each digit once, then shuffled within what keeps that. */
export const filling = (random: Random, size: number): number[] => {
  const [rows, columns] = boxOf(size);
  const within = (bands: number, lines: number): number[] =>
    random.shuffled(range(bands)).flatMap((band) => random.shuffled(range(lines)).map((line) => band * lines + line));
  const digits = random.shuffled(range(size).map((digit) => digit + 1));
  const [down, right] = [within(size / rows, rows), within(size / columns, columns)];
  return down.flatMap((row) =>
    right.map((column) => digits[(column + columns * (row % rows) + Math.floor(row / rows)) % size]!),
  );
};

export const filledOf = (size: number, digits: ArrayLike<number>): Filled => ({
  size,
  digit: (row, column) => digits[(row - 1) * size + column - 1]!,
});
