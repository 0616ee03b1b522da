import { expect, test } from "vitest";
import { fromBase85, toBase85 } from "./base85.ts";

const bytesOf = (length: number): Uint8Array<ArrayBuffer> =>
  Uint8Array.from({ length }, (_, k) => (k * 167 + 13 * k * k) % 256);

test.each([0, 1, 2, 3, 4, 5, 6, 7, 8, 255, 1021])("%d bytes come back", (length) => {
  const bytes = bytesOf(length);
  expect(fromBase85(toBase85(bytes))).toEqual(bytes);
});

test.each([0, 255])("four bytes of %d come back", (byte) => {
  const bytes = new Uint8Array(4).fill(byte);
  expect(fromBase85(toBase85(bytes))).toEqual(bytes);
});

test("four bytes are five signs, and none of them means anything in HTML", () => {
  const text = toBase85(bytesOf(4000));
  expect(text).toHaveLength(5000);
  expect(text).not.toMatch(/[<>&"'\s\\/`]/);
});
