import { expect, test } from "vitest";
import { readTranscript } from "./read-transcript.ts";
import { saidIn } from "./said.ts";

const told = (text: string) => readTranscript(text).problems;
const linesOf = (text: string) => saidIn({ transcript: readTranscript(text).transcript! }).lines;

const vtt = `WEBVTT - a show

NOTE not said

first
00:01.000 --> 00:03.000 align:start
<v Maud>This cage holds <b>5 &lt; 6</b>

00:00:03.000 --> 00:00:05.000
and no more. Then
`;

test("WebVTT: its words, less markup, in sentences over its cues", () =>
  expect(linesOf(vtt)).toEqual([
    { text: "This cage holds 5 < 6 and no more.", from: 1, to: expect.closeTo(3 + (2 * 13) / 18, 6) },
    { text: "Then", from: expect.closeTo(3 + (2 * 13) / 18, 6), to: 5 },
  ]));

test("SRT, with any ends of lines and a byte order mark", () =>
  expect(
    linesOf("\ufeff1\r\n00:00:01,000 --> 00:00:02,000\r\nOne.\r\n\r\n2\r\n01:00:04,500 --> 01:00:05,000\r\nTwo\r\n"),
  ).toEqual([
    { text: "One.", from: 1, to: 2 },
    { text: "Two", from: 3604.5, to: 3605 },
  ]));

test("a plain text has no times of its own", () => {
  expect(readTranscript("So this is a 4.\n\nThen --> 5.")).toEqual({
    transcript: { text: "So this is a 4.\n\nThen --> 5." },
    problems: [],
  });
  expect(saidIn({ transcript: { text: "So this is a 4." } }).lines).toEqual([]);
});

test("spread over a take by the length of its words, from the slate to the end", () => {
  const take = { puzzle: "", slate: 2, ends: 12, entries: [] };
  const { lines } = saidIn({
    take,
    transcript: { text: "aaaa bbbb. cccc dddd" },
    cutting: { edit: [{ from: 0, to: 99, shift: 0 }], slate: 5 },
  });
  expect(lines).toEqual([
    { text: "aaaa bbbb.", from: 5, to: expect.closeTo(5 + (10 * 11) / 21, 6) },
    { text: "cccc dddd", from: expect.closeTo(5 + (10 * 11) / 21, 6), to: expect.closeTo(15, 6) },
  ]);
});

test.each([
  ["WEBVTT\n\n00:01.000 -> 00:02.000\nx\n\n00:03.000 --> 0:04\ny", 6],
  ["WEBVTT\n\n00:05.000 --> 00:02.000\nx", 3],
  ["1\n00:00:05,000 --> 00:00:06,000\nx\n\n2\n00:00:01,000 --> 00:00:02,000\ny", 6],
  ["WEBVTT\n", 1],
  ["", 1],
])("a fault in %j is told in line %i", (text, line) => expect(told(text)).toMatchObject([{ line }]));
