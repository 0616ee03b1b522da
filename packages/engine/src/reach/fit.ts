import { type Place, scarcity, type Weights } from "./guess.ts";

/** A pause that somebody made. */
export interface Observed extends Place {
  readonly seconds: number;
}

type Row = readonly number[];

const features = [() => 1, ({ effort }: Place) => effort, (place: Place) => scarcity(place)] as const;

/** Solves a small system by elimination, the greatest pivot first; what can't be told is 0. */
const solved = (matrix: readonly Row[], right: Row): number[] => {
  const rows = matrix.map((row, k) => [...row, right[k]!]);
  const size = rows.length;
  for (let k = 0; k < size; k++) {
    const pivot = rows.slice(k).reduce((best, row) => (Math.abs(row[k]!) > Math.abs(best[k]!) ? row : best));
    const at = rows.indexOf(pivot);
    [rows[k], rows[at]] = [pivot, rows[k]!];
    if (Math.abs(pivot[k]!) < 1e-9) continue;
    for (const row of rows) {
      if (row === pivot) continue;
      const share = row[k]! / pivot[k]!;
      for (let column = k; column <= size; column++) row[column] = row[column]! - share * pivot[column]!;
    }
  }
  return rows.map((row, k) => (Math.abs(row[k]!) < 1e-9 ? 0 : row[size]! / row[k]!));
};

const leastSquares = (observed: readonly Observed[], used: readonly number[]): number[] => {
  const rows = observed.map((place) => used.map((feature) => features[feature]!(place)));
  const product = (a: number, b: number): number => rows.reduce((sum, row) => sum + row[a]! * row[b]!, 0);
  const matrix = used.map((_, a) => used.map((_, b) => product(a, b)));
  const right = used.map((_, a) => rows.reduce((sum, row, k) => sum + row[a]! * observed[k]!.seconds, 0));
  return solved(matrix, right);
};

/** Least squares; what would come out negative is left out, for no thought takes less than no time. */
export const fitted = (observed: readonly Observed[]): Weights => {
  let used = [0, 1, 2];
  for (;;) {
    const found = leastSquares(observed, used);
    const worst = found.findIndex((weight) => weight < 0 && weight === Math.min(...found));
    if (worst < 0) {
      const weight = (feature: number): number => found[used.indexOf(feature)] ?? 0;
      return { always: weight(0), thought: weight(1), looking: weight(2) };
    }
    used = used.filter((_, k) => k !== worst);
  }
};
