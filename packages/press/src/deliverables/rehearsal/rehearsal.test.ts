import { describe, expect, test } from "vitest";
import { planned } from "../../../../engine/test-kit/planned.ts";
import { fourByFour } from "../../../test-kit/four-by-four.ts";
import { coloursOf } from "../../colours.ts";
import { cuesOf } from "../cues.ts";
import type { Show } from "../show.ts";
import { timesOf } from "../times.ts";
import { rehearsalFrames } from "./frames.ts";
import { readWav, trackOf, writeWav } from "./track.ts";

const board = fourByFour();
const show: Show = { board, plan: planned(board).plan, solution: {} };
const frames = rehearsalFrames(show);

describe("the pictures of a rehearsal", () => {
  test("follow one another from the start to the end, each at least one of 25 a second", () => {
    expect(frames[0]!.from).toBe(0);
    expect(frames.at(-1)!.to).toBeCloseTo(show.plan.seconds, 0);
    for (const [k, { from, to }] of frames.entries()) {
      expect(to - from).toBeGreaterThan(0.039);
      if (k > 0) expect(from).toBe(frames[k - 1]!.to);
    }
  });
  test("show every draft caption while it stands", () => {
    for (const { from, to, text } of cuesOf(timesOf(show.plan).lines)) {
      const frame = frames.find((frame) => frame.from <= (from + to) / 2 && (from + to) / 2 < frame.to)!;
      for (const line of text.split("\n")) expect(frame.svg()).toContain(`>${line}</text>`);
    }
  });
  test("show what a beat concludes only once its line comes to it", () => {
    const [beat] = show.plan.acts[0]!.beats;
    const from = timesOf(show.plan).starts.get(beat!.n)!;
    const at = (share: number): string => frames.findLast((frame) => frame.from <= from + share * beat!.seconds)!.svg();
    const concluded = (svg: string): boolean => svg.includes(coloursOf("light")("so-text"));
    expect(beat!.parts[0]!.role).not.toBe("so");
    expect([0.05, 0.95].map((share) => concluded(at(share)))).toEqual([false, true]);
  });
  test("show a digit once it is told and not before", () => {
    const placed = (svg: string): number => (svg.match(/fill="#2B3A4A"/gi) ?? []).length;
    expect(placed(frames[0]!.svg())).toBe(0);
    expect(placed(frames.at(-1)!.svg())).toBeGreaterThan(0);
  });
});

describe("the spoken track", () => {
  const samples = Int16Array.from([1, -2, 300, -32768]);
  test("a WAV file is read as it was written", () =>
    expect(readWav(writeWav(samples, 22050))).toEqual({ rate: 22050, samples }));
  test("what is no WAV file is none", () => {
    expect(readWav(new Uint8Array(10))).toBeUndefined();
    expect(readWav(new Uint8Array(100))).toBeUndefined();
  });
  test("each line stands at its time, or behind the one before where that is not over", () => {
    const clips = [
      { from: 0.2, samples: Int16Array.from([1, 1, 1]) },
      { from: 0.3, samples: Int16Array.from([2, 2]) },
      { from: 0.9, samples: Int16Array.from([3]) },
    ];
    expect([...trackOf(clips, 10, 1.2)]).toEqual([0, 0, 1, 1, 1, 2, 2, 0, 0, 3, 0, 0]);
  });
});
