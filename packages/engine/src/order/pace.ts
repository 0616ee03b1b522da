/** A presenter's pace, in seconds and words a minute; round defaults, a presenter's own takes replace them. */
export interface Pace {
  readonly wordsAMinute: number;
  readonly ruleKind: number;
  readonly mark: number;
  readonly digit: number;
  readonly breath: number;
  /** Before a step of level 3 or more. */
  readonly longBreath: number;
}

export const usualPace: Pace = { wordsAMinute: 200, ruleKind: 10, mark: 0.5, digit: 1, breath: 1, longBreath: 2 };

export const speaking = (words: number, { wordsAMinute }: Pace): number => (words * 60) / wordsAMinute;

/** To a tenth of a second. */
export const tenths = (seconds: number): number => Math.round(seconds * 10) / 10;
