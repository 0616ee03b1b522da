import { expect, test } from "vitest";
import { secondsAt } from "./timecode.ts";

const drop = { rate: 30, drop: true };

/** Counted frame by frame, leaving out the numbers that SMPTE ST 12-1 leaves out. */
const countedFrames = (rate: number, seconds: number): Map<string, number> => {
  const found = new Map<string, number>();
  const two = (number: number): string => String(number).padStart(2, "0");
  let frames = 0;
  for (let whole = 0; whole < seconds; whole++)
    for (let frame = 0; frame < rate; frame++) {
      const minute = Math.floor(whole / 60);
      if (whole % 60 === 0 && minute % 10 !== 0 && frame < rate / 15) continue;
      found.set(`${two(Math.floor(minute / 60))}:${two(minute % 60)}:${two(whole % 60)};${two(frame)}`, frames++);
    }
  return found;
};

test.each([30, 60])("drop frame at %i numbers a second, counted frame by frame for 25 minutes", (rate) => {
  const counted = [...countedFrames(rate, 1500)];
  const seconds = counted.map(([text]) => secondsAt(text, { rate, drop: true })!);
  const right = counted.map(([, frames]) => (frames * 1001) / (rate * 1000));
  expect(Math.max(...seconds.map((at, k) => Math.abs(at - right[k]!)))).toBeLessThan(1e-9);
});

test("an hour of drop frame is 108 frames short of an hour's numbers, and less than 4 ms off the clock (SMPTE ST 12-1)", () => {
  expect(secondsAt("01:00:00;00", drop)).toBeCloseTo((107_892 * 1001) / 30_000, 9);
  expect(Math.abs(secondsAt("01:00:00;00", drop)! - 3600)).toBeLessThan(0.004);
});

test("numbers that drop frame leaves out are none", () => {
  expect(secondsAt("00:01:00;00", drop)).toBeUndefined();
  expect(secondsAt("00:01:00;01", drop)).toBeUndefined();
  expect(secondsAt("00:10:00;00", drop)).toBeDefined();
});

test("without it a timecode is plain", () => {
  expect(secondsAt("01:02:03:12", { rate: 24, drop: false })).toBe(3723.5);
  expect(secondsAt("00:00:00:24", { rate: 24, drop: false })).toBeUndefined();
  expect(secondsAt("00:61:00:00", { rate: 24, drop: false })).toBeUndefined();
  expect(secondsAt("12", { rate: 24, drop: false })).toBeUndefined();
});
