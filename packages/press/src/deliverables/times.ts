import { type Plan, type PlanBeat, wordsIn } from "@solvewright/engine";

/** A stretch of the show, in seconds from its start. */
export interface Stretch {
  readonly title: string;
  readonly from: number;
  readonly to: number;
}

/** One thing that is said, in seconds from the start of the show. */
export interface Spoken {
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

export interface Timed {
  /** The acts, the rules the first of them. */
  readonly acts: readonly Stretch[];
  /** The same, none of them too short to be a chapter. */
  readonly chapters: readonly Stretch[];
  readonly lines: readonly Spoken[];
  /** When each beat begins, the rules' among them, by its number. */
  readonly starts: ReadonlyMap<number, number>;
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);

/** Seconds a word of what acts open and close with: the plan's time holds them, its beats do not. */
const secondsAWord = ({ seconds, rules, acts }: Plan): number => {
  const words = sum(acts.map(({ open, close }) => wordsIn(open) + wordsIn(close)));
  const beats = sum(acts.flatMap((act) => act.beats.map((beat) => beat.seconds)));
  return words === 0 ? 0 : Math.max(0, seconds - rules.seconds - beats) / words;
};

/** Chapters (common practice): so many seconds at the least, and so many of them, where there is time for them. */
const shortest = 10;
const fewest = 3;

const joined = (chapters: readonly Stretch[]): Stretch[] => {
  const kept: Stretch[] = [];
  for (const chapter of chapters) {
    const before = kept.at(-1);
    if (before && Math.min(chapter.to - chapter.from, before.to - before.from) < shortest)
      kept[kept.length - 1] = { ...before, to: chapter.to };
    else kept.push(chapter);
  }
  return kept;
};

/** The longest chapter in two, at the beat's start that is nearest to its middle; as they are where none can be halved. */
const halved = (chapters: readonly Stretch[], starts: readonly number[]): readonly Stretch[] => {
  const cuts = chapters.flatMap((chapter, k) =>
    starts
      .filter((at) => at - chapter.from >= shortest && chapter.to - at >= shortest)
      .map((at) => ({ k, at, half: Math.min(at - chapter.from, chapter.to - at) })),
  );
  const best = cuts.sort((a, b) => b.half - a.half || a.at - b.at)[0];
  if (!best) return chapters;
  const { title, from, to } = chapters[best.k]!;
  const after = { title: `${title.replace(/, continued$/, "")}, continued`, from: best.at, to };
  return [...chapters.slice(0, best.k), { title, from, to: best.at }, after, ...chapters.slice(best.k + 1)];
};

/**
 * Stretches as chapters: one that is too short joins the one before, the first the next; where too few are left, long
 * ones are halved where a beat starts.
 */
export const longEnough = (stretches: readonly Stretch[], starts: readonly number[]): readonly Stretch[] => {
  let chapters: readonly Stretch[] = joined(stretches);
  for (let more = chapters.length; more < fewest; more++) chapters = halved(chapters, starts);
  return chapters;
};

type Said = Pick<PlanBeat, "n" | "say" | "seconds" | "pause">;

/** When everything of a plan is said: the rules first, then act by act. */
export const timesOf = (plan: Plan): Timed => {
  const lines: Spoken[] = [];
  const starts = new Map<number, number>();
  const pace = secondsAWord(plan);
  let now = 0;
  const say = (text: string, seconds: number): void => {
    if (text !== "") lines.push({ text, from: now, to: now + seconds });
    now += seconds;
  };
  const sayBeat = ({ n, say: text, seconds, pause }: Said): void => {
    starts.set(n, now);
    if (pause) say(pause.say, pause.seconds);
    say(text, seconds - (pause?.seconds ?? 0));
  };
  const chapter = (title: string, tell: () => void): Stretch => {
    const from = now;
    tell();
    return { title, from, to: now };
  };
  const first = chapter(plan.rules.title, () => plan.rules.lines.forEach(sayBeat));
  const rest = plan.acts.map(({ title, open, close, beats }) =>
    chapter(title, () => {
      say(open, wordsIn(open) * pace);
      beats.forEach(sayBeat);
      say(close, wordsIn(close) * pace);
    }),
  );
  const acts = [first, ...rest];
  return { acts, chapters: longEnough(acts, [...starts.values()]), lines, starts };
};

/** 75.5 as "1:15". */
export const clock = (seconds: number): string => {
  const whole = Math.floor(seconds);
  const [hours, minutes] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60];
  const two = (number: number): string => String(number).padStart(2, "0");
  return hours > 0 ? `${hours}:${two(minutes)}:${two(whole % 60)}` : `${minutes}:${two(whole % 60)}`;
};
