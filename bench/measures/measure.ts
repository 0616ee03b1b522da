import type { Options } from "../options.ts";

/** One line of figures. */
export interface Row {
  readonly measure: string;
  /** A family of puzzles, or what else is measured. */
  readonly of: string;
  /** By name with unit; numbers, or words where there is none. */
  readonly figures: Readonly<Record<string, number | string>>;
}

/** Something measured: its rows come one by one, as they are ready. */
export interface Measure {
  readonly name: string;
  /** What the figures mean and how they were taken. */
  readonly about: string;
  rows(options: Options): AsyncGenerator<Row>;
}

/** Whether `--only` leaves it in. */
export const isWanted = (name: string, { only }: Options, measure?: string): boolean =>
  name.startsWith(only) || (measure?.startsWith(only) ?? false);
