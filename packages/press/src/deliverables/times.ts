import type { Plan, PlanBeat } from "@solvewright/engine";

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

interface Timed {
  readonly chapters: readonly Stretch[];
  readonly lines: readonly Spoken[];
}

/** Words between two beats take as long as at the presenter's usual pace. */
const saying = (text: string): number => (text.split(/\s+/).length * 60) / 200;

const shortest = 10;

/** Chapters of at least ten seconds each (common practice): one that is shorter joins the one before. */
const longEnough = (chapters: readonly Stretch[]): Stretch[] => {
  const kept: Stretch[] = [];
  for (const chapter of chapters) {
    const before = kept.at(-1);
    if (before && chapter.to - chapter.from < shortest) kept[kept.length - 1] = { ...before, to: chapter.to };
    else kept.push(chapter);
  }
  return kept;
};

/** When everything of a plan is said: the rules first, then act by act. Times in seconds from the start. */
export const timesOf = ({ rules, acts }: Plan): Timed => {
  const lines: Spoken[] = [];
  let now = 0;
  const say = (text: string, seconds: number): void => {
    lines.push({ text, from: now, to: now + seconds });
    now += seconds;
  };
  const chapter = (title: string, tell: () => void): Stretch => {
    const from = now;
    tell();
    return { title, from, to: now };
  };
  const sayBeat = ({ say: text, seconds }: PlanBeat): void => say(text, seconds);
  const first = chapter("The rules", () => {
    for (const line of rules.lines) say(line.say, line.seconds);
  });
  const rest = acts.map((act) =>
    chapter(act.title, () => {
      say(act.open, saying(act.open));
      act.beats.forEach(sayBeat);
      say(act.close, saying(act.close));
    }),
  );
  return { chapters: longEnough([first, ...rest]), lines };
};

/** 75.5 as "1:15". */
export const clock = (seconds: number): string => {
  const whole = Math.floor(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
};
