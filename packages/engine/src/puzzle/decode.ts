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

/** The text of a file's bytes, which must be UTF-8, or what is wrong with them. */
export const decode = (bytes: Uint8Array): string | Problem => {
  if (bytes.length > mostBytes)
    return problem(1, 1, `a file of ${Math.ceil(bytes.length / 1024)} KiB`, "64 KiB at most");
  const text = utf8(bytes);
  if (text !== undefined) return text;
  let [line, start] = [1, 0];
  for (
    let end = bytes.indexOf(10);
    end >= 0 && utf8(bytes.subarray(start, end)) !== undefined;
    end = bytes.indexOf(10, start)
  ) {
    line++;
    start = end + 1;
  }
  let good = 0;
  for (let end = start; end <= bytes.length && bytes[end - 1] !== 10; end++) {
    const before = utf8(bytes.subarray(start, end));
    if (before !== undefined) good = [...before].length;
  }
  return problem(line, good + 1, "a byte that is no UTF-8", "a file in UTF-8; most editors offer it when saving");
};
