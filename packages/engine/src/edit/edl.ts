import type { Spot, Tell } from "../puzzle/tree.ts";
import { backThrough, type Cutting, type Placed, piecesOf } from "./pieces-of.ts";
import { type Counting, framesIn, secondsAt } from "./timecode.ts";

const timecode = "\\d{1,2}:\\d{2}:\\d{2}[:;.,]\\d{2}";
const eventShape = new RegExp(
  `^\\s*\\d+\\s+(\\S+)\\s+(\\S+)\\s+[CDWK]\\S*(?:\\s+[A-Z])?(?:\\s+\\d+)?((?:\\s+${timecode}){4})\\s*$`,
);
const nameShape = /^\*\s*FROM CLIP NAME:\s*(.+?)\s*$/i;
const markerShape = new RegExp(`^\\*\\s*LOC:\\s*(${timecode})\\s+\\S+\\s+(.+?)\\s*$`, "i");
const dropShape = /^FCM:\s*(NON-)?DROP FRAME/i;

interface Line extends Spot {
  readonly text: string;
}

interface Event extends Spot {
  readonly name: string;
  readonly isSeen: boolean;
  readonly times: readonly string[];
}

const linesIn = (source: string): Line[] => {
  let from = 0;
  return source.split("\n").map((text, k) => {
    const line = { text: text.replace(/\r$/, ""), from, path: `${k + 1}` };
    from += text.length + 1;
    return line;
  });
};

/** Every event with its clip's name, which stands in a remark below it, or else its reel's. */
const eventsIn = (lines: readonly Line[], tell: Tell): Event[] => {
  const events: Event[] = [];
  for (const { text, from, path } of lines) {
    const [, reel, tracks, times] = eventShape.exec(text) ?? [];
    const name = nameShape.exec(text)?.[1];
    const last = events.at(-1);
    if (times)
      events.push({ from, path, name: reel!, isSeen: /V|^B$/.test(tracks!), times: times.trim().split(/\s+/) });
    else if (/^\s*\d/.test(text))
      tell(
        { from, path },
        text.trim().slice(0, 60),
        "an event: number, reel, track, kind and four timecodes (CMX 3600)",
      );
    else if (name && last) events[events.length - 1] = { ...last, name };
    else if (/^M2\s/.test(text)) tell({ from, path }, text.trim().slice(0, 60), "a recording at its own speed: no M2");
  }
  return events;
};

/** Whole rates; a list does not say which, so it is the least that has all its frame numbers. */
const usualRates = [24, 25, 30, 50, 60];

const countingIn = (source: string, lines: readonly Line[], events: readonly Event[]): Counting => {
  const most = Math.max(0, ...events.flatMap(({ times }) => times.map((time) => framesIn(time) ?? 0)));
  const said = lines.map(({ text }) => dropShape.exec(text)).find((found) => found !== null);
  const drop = said ? said[1] === undefined : /\d;\d{2}/.test(source);
  return { drop, rate: drop ? (most < 30 ? 30 : 60) : (usualRates.find((rate) => most < rate) ?? 100) };
};

const placedIn = (events: readonly Event[], counting: Counting, tell: Tell): Placed[] =>
  events.flatMap(({ name, times, from: place, path }) => {
    const spot = { from: place, path };
    const seconds = times.map((time) => secondsAt(time, counting));
    const missing = seconds.indexOf(undefined);
    if (missing >= 0)
      return tell(spot, times[missing]!, `a timecode that there is at ${counting.rate} frames a second`) ?? [];
    const [from, to, at, until] = seconds as [number, number, number, number];
    if (Math.abs(to - from - (until - at)) > 1.5 / counting.rate)
      tell(spot, `${(to - from).toFixed(2)} s shown in ${(until - at).toFixed(2)} s`, "a recording at its own speed");
    return to > from ? [{ media: name, from, to, at, spot }] : [];
  });

const hour = 3600;

/**
 * Reads a CMX 3600 edit decision list. The video begins with its first event; the recording at the full hour before the
 * first of its pieces (common practice). A locator named "slate" says where the slate flashes.
 */
export const readEdl = (source: string, tell: Tell): Cutting => {
  const lines = linesIn(source);
  const events = eventsIn(lines, tell);
  const seen = events.some(({ isSeen }) => isSeen) ? events.filter(({ isSeen }) => isSeen) : events;
  const counting = countingIn(source, lines, seen);
  const placed = placedIn(seen, counting, tell);
  if (placed.length === 0)
    return tell({ from: 0, path: "" }, "no events", "an edit decision list (CMX 3600)") ?? { edit: [] };
  const begins = Math.min(...placed.map(({ at }) => at));
  const pieces = piecesOf(
    placed.map((piece) => ({ ...piece, at: piece.at - begins })),
    tell,
  );
  const zero = Math.floor((pieces[0]?.from ?? 0) / hour + 1e-9) * hour;
  const edit = pieces.map(({ from, to, shift }) => ({ from: from - zero, to: to - zero, shift: shift + zero }));
  const marker = lines.map(({ text }) => markerShape.exec(text)).find((found) => /^slate\b/i.test(found?.[2] ?? ""));
  const seconds = marker ? secondsAt(marker[1]!, counting) : undefined;
  const slate = seconds === undefined ? undefined : backThrough(edit, seconds - begins);
  return { edit, ...(slate === undefined ? {} : { slate }) };
};
