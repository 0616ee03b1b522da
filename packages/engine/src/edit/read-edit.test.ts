import { describe, expect, test } from "vitest";
import { randomFrom } from "../../test-kit/random.ts";
import { endOf, through } from "./edit.ts";
import { readEdit } from "./read-edit.ts";

const told = (text: string) => readEdit(text).problems;
const carried = (text: string, time: number) => {
  const { cutting, problems } = readEdit(text);
  expect(problems).toEqual([]);
  return through(cutting!.edit, time);
};

describe("our own form", () => {
  const own = `edit: 1\noffset: 12.5\nopening: 4\ncuts:\n  - { from: 60, to: "1:30" }\n  - { from: 0, to: 10 }\n`;
  test("offset, opening and cuts", () => {
    expect(readEdit(own).cutting!.slate).toBe(12.5);
    expect(carried(own, 12.5)).toEqual({ at: 6.5, cut: false });
    expect(carried(own, 70)).toEqual({ at: 54, cut: true });
    expect(carried(own, 100)).toEqual({ at: 64, cut: false });
  });
  test("as JSON too, and with no cuts", () => expect(carried('{ "edit": 1 }', 70).at).toBe(70));
  test.each([
    ["edit: 2", 1],
    ["edit: 1\noffset: soon", 2],
    ["edit: 1\ncuts: none", 2],
    ["edit: 1\ncuts:\n  - { from: 5, to: 4 }", 3],
    ["edit: 1\ncuts:\n  - { from: 5 }", 3],
    ["edit: 1\ncutz: []", 2],
    ["words", 1],
    ["", 1],
  ])("%j has its fault told in line %i", (text, line) => expect(told(text)).toMatchObject([{ line }]));
});

const list = `TITLE: THE SHOW
FCM: NON-DROP FRAME

001  AX       V     C        00:00:00:00 00:00:04:00 01:00:00:00 01:00:04:00
* FROM CLIP NAME: TITLE CARD
002  AX       V     C        01:00:10:00 01:01:00:00 01:00:04:00 01:00:54:00
* FROM CLIP NAME: TAKE
* LOC: 01:00:06:12 RED     SLATE
003  AX       AA/V  C        01:01:30:00 01:03:30:12 01:00:54:00 01:02:54:12
* FROM CLIP NAME: TAKE
004  AX       A     C        01:01:30:00 01:03:30:12 01:00:54:00 01:02:54:12
`;

describe("a CMX 3600 list", () => {
  test("the recording of which most is shown, from its full hour on; the slate by its locator", () => {
    const { cutting, problems } = readEdit(list);
    expect(problems).toEqual([]);
    expect(cutting!.slate).toBeCloseTo(12.5, 9);
    expect(through(cutting!.edit, 30)).toEqual({ at: 24, cut: false });
    expect(through(cutting!.edit, 75)).toEqual({ at: 54, cut: true });
    expect(through(cutting!.edit, 100)).toEqual({ at: 64, cut: false });
    expect(endOf(cutting!.edit)).toBeCloseTo(174.5, 9);
  });
  test("drop frame: ten minutes of it are ten minutes", () => {
    const text = "TITLE: X\nFCM: DROP FRAME\n001 AX V C 00:00:00;00 00:20:00;00 01:00:00;00 01:20:00;00\n";
    expect(endOf(readEdit(text).cutting!.edit)).toBeCloseTo((1200 * 30 - 36) * (1001 / 30_000), 6);
  });
  test.each([
    [list.replace("01:01:00:00", "01:01:00:99"), 6],
    [list.replace("01:01:00:00 01:00:04:00", "01:01:00:00 01:00:14:00"), 6],
    [list.replaceAll("01:01:30:00", "01:00:30:00").replaceAll("01:03:30:12", "01:02:30:12"), 9],
    [list.replace("* LOC", "M2   AX       050.0       01:00:10:00\n* LOC"), 8],
    [list.replace("002  AX       V     C        01:00:10:00", "002  AX"), 6],
  ])("fault %# is told in its line", (text, line) => expect(told(text)[0]).toMatchObject({ line }));
});

const time = (seconds: number, rate = 25) => ({ OTIO_SCHEMA: "RationalTime.1", rate, value: seconds * rate });
const range = (from: number, long: number) => ({
  OTIO_SCHEMA: "TimeRange.1",
  start_time: time(from),
  duration: time(long, 50),
});
const media = { OTIO_SCHEMA: "ExternalReference.1", target_url: "file:///take.mov", available_range: range(3600, 600) };
const clip = (from: number, long: number, more: object = {}) => ({
  OTIO_SCHEMA: "Clip.2",
  name: "take",
  source_range: range(from, long),
  effects: [],
  markers: [],
  enabled: true,
  active_media_reference_key: "DEFAULT_MEDIA",
  media_references: { DEFAULT_MEDIA: media },
  ...more,
});
const marker = (at: number) => ({ OTIO_SCHEMA: "Marker.2", name: "Slate", marked_range: range(at, 0) });
const gap = (long: number) => ({ OTIO_SCHEMA: "Gap.1", source_range: range(0, long) });
const fade = { OTIO_SCHEMA: "Transition.1", in_offset: time(1), out_offset: time(1) };
const timeline = (children: readonly object[], markers: readonly object[] = []) =>
  JSON.stringify({
    OTIO_SCHEMA: "Timeline.1",
    name: "the show",
    tracks: {
      OTIO_SCHEMA: "Stack.1",
      markers,
      children: [
        { OTIO_SCHEMA: "Track.1", kind: "Audio", source_range: null, children: [clip(3600, 600)] },
        { OTIO_SCHEMA: "Track.1", kind: "Video", source_range: null, children },
      ],
    },
  });

describe("OpenTimelineIO (file format: opentimelineio.readthedocs.io)", () => {
  const cut = [gap(4), clip(3610, 50, { markers: [marker(3612.5)] }), fade, clip(3690, 120)];
  test("gaps, transitions, media that begin at an hour, a marker for the slate", () => {
    const { cutting, problems } = readEdit(timeline(cut));
    expect(problems).toEqual([]);
    expect(cutting!.slate).toBe(12.5);
    expect(through(cutting!.edit, 30)).toEqual({ at: 24, cut: false });
    expect(through(cutting!.edit, 75)).toEqual({ at: 54, cut: true });
    expect(through(cutting!.edit, 100)).toEqual({ at: 64, cut: false });
  });
  test("a marker on the whole", () =>
    expect(readEdit(timeline([gap(4), clip(3610, 50)], [marker(6.5)])).cutting!.slate).toBe(12.5));
  test("the older form of a clip, with one medium", () =>
    expect(
      carried(
        timeline([clip(3610, 50, { OTIO_SCHEMA: "Clip.1", active_media_reference_key: null, media_reference: media })]),
        30,
      ).at,
    ).toBe(20));
  test("a clip of all its media", () =>
    expect(carried(timeline([clip(0, 0, { source_range: null })]), 30).at).toBe(30));
  test.each([
    [
      "a change of speed",
      timeline([clip(3610, 50, { effects: [{ OTIO_SCHEMA: "LinearTimeWarp.1", time_scalar: 2 }] })]),
    ],
    ["a piece twice", timeline([clip(3610, 50), clip(3610, 50)])],
    ["no clips", timeline([]).replaceAll("Clip.2", "Gap.1")],
    ["no rate", timeline([clip(3610, 50)]).replaceAll('"rate":25', '"rate":0')],
    ["not JSON", `${timeline(cut)}]`],
  ])("%s is told", (_, text) => expect(told(text)).not.toEqual([]));
});

test.each([list, timeline([clip(3610, 50)]), "edit: 1\noffset: 12.5\ncuts: [{ from: 60, to: 90 }]\n"])(
  "reading never throws, whatever is changed: %#",
  (source) => {
    const random = randomFrom(11);
    for (let run = 0; run < 400; run++) {
      const at = random.below(source.length);
      const put = random.pick(["", "x", '"', "{", "]", "1e999", "\u0000", ":", "99", source[at]! + source[at]!]);
      const { cutting, problems } = readEdit(source.slice(0, at) + put + source.slice(at + 1));
      expect(cutting === undefined).toBe(problems.length > 0);
    }
  },
);
