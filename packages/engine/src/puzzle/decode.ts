import type { Problem } from "./puzzle.ts";
import { mostBytes } from "./source.ts";

/** Of bytes that are no UTF-8: undefined. */
const utf8 = (bytes: Uint8Array): string | undefined => {
  try {
    return decodeURIComponent(Array.from(bytes, (byte) => `%${byte.toString(16).padStart(2, "0")}`).join(""));
  } catch {
    return undefined;
  }
};

const problem = (line: number, column: number, read: string, right: string): Problem => ({
  line,
  column,
  read,
  right,
  path: "",
});

const lengthFrom = (lead: number): number => (lead < 0x80 ? 1 : lead < 0xe0 ? 2 : lead < 0xf0 ? 3 : 4);

/** Where the first byte stands that is part of no character. */
const firstStrange = (bytes: Uint8Array): { readonly line: number; readonly column: number } => {
  let [line, column] = [1, 1];
  for (let at = 0; at < bytes.length; at += lengthFrom(bytes[at]!)) {
    const character = utf8(bytes.subarray(at, at + lengthFrom(bytes[at]!)));
    if (character === undefined) break;
    [line, column] = character === "\n" ? [line + 1, 1] : [line, column + 1];
  }
  return { line, column };
};

/** The text of a file's bytes, which must be UTF-8 and at most so many, or what is wrong with them. */
export const decode = (bytes: Uint8Array, most = mostBytes): string | Problem => {
  if (bytes.length > most)
    return problem(1, 1, `a file of ${Math.ceil(bytes.length / 1024)} KiB`, `${most / 1024} KiB at most`);
  const text = utf8(bytes);
  if (text !== undefined) return text;
  const { line, column } = firstStrange(bytes);
  return problem(line, column, "a byte that is no UTF-8", "a file in UTF-8; most editors offer it when saving");
};
