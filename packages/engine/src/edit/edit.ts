/** A stretch of one clock that another shows, that many seconds later. */
export interface Piece {
  readonly from: number;
  readonly to: number;
  readonly shift: number;
}

/**
 * How one clock is carried over to another: a take's to its recording's, a recording's to the video's. Its pieces are in
 * the order of both clocks and overlap in neither; what lies between two of them is cut.
 */
export type Edit = readonly Piece[];

/** A stretch of a clock, in seconds. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Nothing is cut. */
export const shiftedBy = (shift: number): Edit => [
  { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY, shift },
];

/** The cuts in order, those that touch as one. */
const merged = (cuts: readonly Span[]): Span[] => {
  const found: Span[] = [];
  for (const cut of [...cuts].filter(({ from, to }) => from < to).sort((a, b) => a.from - b.from)) {
    const before = found.at(-1);
    if (before && cut.from <= before.to) found[found.length - 1] = { ...before, to: Math.max(before.to, cut.to) };
    else found.push(cut);
  }
  return found;
};

/** A recording from its start on, less the cuts, after an opening of so many seconds. */
export const cutOut = (cuts: readonly Span[], opening = 0): Edit => {
  const pieces: Piece[] = [];
  let [from, shift] = [0, opening];
  for (const cut of merged(cuts)) {
    if (cut.from > from) pieces.push({ from, to: cut.from, shift });
    shift -= Math.max(0, cut.to - Math.max(from, cut.from));
    from = Math.max(from, cut.to);
  }
  return [...pieces, { from, to: Number.POSITIVE_INFINITY, shift }];
};

/** Carried over by one edit and then by another. */
export const followedBy = (first: Edit, second: Edit): Edit =>
  first.flatMap((one) =>
    second.flatMap((other) => {
      const from = Math.max(one.from, other.from - one.shift);
      const to = Math.min(one.to, other.to - one.shift);
      return from < to ? [{ from, to, shift: one.shift + other.shift }] : [];
    }),
  );

export interface Carried {
  readonly at: number;
  /** It lay in a cut, and was moved to the cut's end. */
  readonly cut: boolean;
}

/** When the other clock shows this time; what is cut is moved to the end of the cut, or to the very end after the last piece. */
export const through = (edit: Edit, time: number): Carried => {
  const next = edit.find(({ to }) => time < to);
  if (!next) return { at: endOf(edit), cut: true };
  return time < next.from ? { at: next.from + next.shift, cut: true } : { at: time + next.shift, cut: false };
};

/** When the last piece is over on the other clock; Infinity where it goes on for as long as there is something. */
export const endOf = (edit: Edit): number => {
  const last = edit.at(-1);
  return last ? last.to + last.shift : 0;
};
