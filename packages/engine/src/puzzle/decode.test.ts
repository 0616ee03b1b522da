import { describe, expect, test } from "vitest";
import { randomFrom } from "../../test-kit/random.ts";
import { decode } from "./decode.ts";

const bytes = (...list: number[]): Uint8Array => Uint8Array.from(list);
const encoded = (text: string): Uint8Array => new TextEncoder().encode(text);

test.each(["", "puzzle: 1\n", "Łódź ≤ 5 😀\r\n", "\ufeffx"])("%j is read as it was written", (text) =>
  expect(decode(encoded(text))).toBe(text),
);

describe("bytes that are no UTF-8 are told at their place", () => {
  test.each([
    ["a Latin-1 letter", bytes(0x61, 0x0a, 0x62, 0x63, 0xe9, 0x64), { line: 2, column: 3 }],
    ["a byte after a long character", bytes(...encoded("😀é"), 0xff), { line: 1, column: 3 }],
    ["a UTF-16 mark", bytes(0xff, 0xfe, 0x61, 0x00), { line: 1, column: 1 }],
    ["a character cut off", bytes(0x61, 0xe2, 0x89), { line: 1, column: 2 }],
    ["an overlong form", bytes(0xc0, 0xaf), { line: 1, column: 1 }],
    ["half a surrogate pair", bytes(0xed, 0xa0, 0x80), { line: 1, column: 1 }],
  ])("%s", (_, data, place) => expect(decode(data)).toMatchObject({ ...place, right: expect.stringMatching(/UTF-8/) }));
});

test("too many bytes are told", () =>
  expect(decode(new Uint8Array(65_537))).toMatchObject({ line: 1, column: 1, read: "a file of 65 KiB" }));

test("is as strict as the platform's decoder", () => {
  const random = randomFrom(3);
  const strict = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
  const platform = (data: Uint8Array): string | undefined => {
    try {
      return strict.decode(data);
    } catch {
      return undefined;
    }
  };
  const starts = [
    0x61, 0x0a, 0x80, 0xbf, 0xc2, 0xc0, 0xe0, 0xe2, 0xed, 0xef, 0xf0, 0xf4, 0xf5, 0xff, 0x9f, 0xa0, 0x8f, 0x90,
  ];
  for (let k = 0; k < 3000; k++) {
    const data = Uint8Array.from({ length: 1 + random.below(5) }, () => random.pick(starts));
    const text = decode(data);
    expect(typeof text === "string" ? text : undefined, `${data}`).toBe(platform(data));
  }
});
