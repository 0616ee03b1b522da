/** What a digit asks of someone who solves alone. */
export interface Place {
  /** The thoughts up to it, as deduce/effort.ts counts them. */
  readonly effort: number;
  /** Cells that a newcomer's step settles just before; none: something has to be found first. */
  readonly open: number;
}

/** What a pause before a digit is made of: seconds where they are fitted to testers, else of no unit. */
export interface Weights {
  readonly always: number;
  /** A thought. */
  readonly thought: number;
  /** Looking for the one step that is open; half of it where two are, and all of it where none is easy. */
  readonly looking: number;
}

/**
 * Ours, fitted to nobody: a digit in a place with one way on asks as much looking as three thoughts. Only the order of
 * the pauses means something.
 */
export const unfitted: Weights = { always: 0, thought: 1, looking: 3 };

export const scarcity = ({ open }: Pick<Place, "open">): number => 1 / Math.max(1, open);

export const guessOf = (place: Place, { always, thought, looking }: Weights): number =>
  always + thought * place.effort + looking * scarcity(place);
