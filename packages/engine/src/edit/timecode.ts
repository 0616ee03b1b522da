/** How an editor counts frames: `rate` numbers a second, some of them left out where the true rate is 1000/1001 of it. */
export interface Counting {
  readonly rate: number;
  readonly drop: boolean;
}

const shape = /^(\d{1,2}):(\d{2}):(\d{2})[:;.,](\d{2})$/;

/** The frame number of a timecode; undefined where it is none. */
export const framesIn = (text: string): number | undefined => {
  const frames = shape.exec(text)?.[4];
  return frames === undefined ? undefined : Number(frames);
};

/**
 * Seconds at a timecode; undefined where there is no such one. In drop frame (SMPTE ST 12-1) the first two numbers of
 * thirty (four of sixty) are left out at each full minute but the tenth, as the true rate is 30000/1001.
 */
export const secondsAt = (text: string, { rate, drop }: Counting): number | undefined => {
  const found = shape.exec(text);
  if (!found) return undefined;
  const [hours, minutes, seconds, frame] = found.slice(1).map(Number) as [number, number, number, number];
  if (minutes > 59 || seconds > 59 || frame >= rate) return undefined;
  const whole = (hours * 60 + minutes) * 60 + seconds;
  if (!drop) return whole + frame / rate;
  const left = rate / 15;
  if (seconds === 0 && frame < left && minutes % 10 !== 0) return undefined;
  const past = hours * 60 + minutes;
  const frames = whole * rate + frame - left * (past - Math.floor(past / 10));
  return (frames * 1001) / (rate * 1000);
};
