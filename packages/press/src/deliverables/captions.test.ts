import { expect, test } from "vitest";
import { cuesOf } from "./cues.ts";
import { writeSrt, writeVtt } from "./vtt.ts";

const lines = [
  {
    text: "This cage of 5 has no room for a 5 or a 6 in these two. This X fits only one way here: this is a 4.",
    from: 0,
    to: 10,
  },
  { text: "Then 4.", from: 10, to: 10.4 },
  {
    text: "Six cells of this box lie in the yard and use up 1 to 6. That leaves 7 and 8 for the other two.",
    from: 10.4,
    to: 18,
  },
];
const cues = cuesOf(lines);

test("captions keep to two lines of 42 characters, 1 to 7 s, 20 characters a second, and never overlap", () => {
  for (const [k, { from, to, text }] of cues.entries()) {
    const rows = text.split("\n");
    expect(rows.length).toBeLessThanOrEqual(2);
    for (const row of rows) expect(row.length).toBeLessThanOrEqual(42);
    expect(to - from).toBeGreaterThanOrEqual(0.999);
    expect(to - from).toBeLessThanOrEqual(7.001);
    expect(text.length / (to - from)).toBeLessThanOrEqual(20.01);
    if (k > 0) expect(from).toBeGreaterThanOrEqual(cues[k - 1]!.to - 1e-9);
  }
});

test("no word is lost", () => {
  const words = (texts: readonly string[]): string[] => texts.join(" ").split(/\s+/);
  expect(words(cues.map(({ text }) => text))).toEqual(words(lines.map(({ text }) => text)));
});

const textsOf = (text: string, seconds: number): string[] =>
  cuesOf([{ text, from: 0, to: seconds }]).map((cue) => cue.text.replace("\n", " "));

test("each sentence that fits has a caption of its own", () => {
  const three = ["This cage of 3 leaves 1 and 2 for these two.", "This X can't take the 1 here, so it's the 2."];
  expect(textsOf(three.join(" "), 12)).toEqual(three);
  const numbers = ["And this column needs a 5.", "4 and 8 finish this row: this column has a 4."];
  expect(textsOf(numbers.join(" "), 12)).toEqual(numbers);
});
test("a sentence that is too long is parted where a clause ends", () =>
  expect(
    textsOf("With the 8 of this column anywhere else, this cage of 12 and this renban line can't be filled.", 12)[0],
  ).toBe("With the 8 of this column anywhere else,"));

test("WebVTT as the W3C has it: header, hours, full stops, escapes", () =>
  expect(writeVtt([{ from: 3661.5, to: 3662, text: "a < b & c" }])).toBe(
    "WEBVTT\n\n01:01:01.500 --> 01:01:02.000\na &lt; b &amp; c\n",
  ));
test("SRT: numbers from 1 and commas", () =>
  expect(writeSrt([{ from: 0, to: 1.25, text: "so" }])).toBe("1\n00:00:00,000 --> 00:00:01,250\nso\n"));
