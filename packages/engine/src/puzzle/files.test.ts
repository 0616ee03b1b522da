import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { puzzleOf } from "../../test-kit/puzzles.ts";
import { read } from "./read.ts";
import { write } from "./write.ts";

const folders = [
  "../../../../checks/published/",
  "../../../../examples/",
  "../../../../../shared/cases/",
  "../../../../../shared/checks/published/",
];
const files = folders
  .map((folder) => fileURLToPath(new URL(folder, import.meta.url)))
  .filter(existsSync)
  .flatMap((folder) => readdirSync(folder).map((name) => folder + name))
  .filter((file) => file.endsWith(".puzzle.yaml"))
  .map((file) => ({ name: file.split("/").slice(-2).join("/"), text: readFileSync(file, "utf8") }));

test("there are files to read", () => expect(files.length).toBeGreaterThan(10));

describe.each(files)("$name", ({ text }) => {
  test("is sound, and writes and reads back as itself", () => {
    const puzzle = puzzleOf(text);
    const back = puzzleOf(write(puzzle));
    const byId = (rules: typeof puzzle.rules) => new Map(rules.map((rule) => [rule.id, rule]));
    expect({ ...back, rules: byId(back.rules) }).toEqual({ ...puzzle, rules: byId(puzzle.rules) });
  });
  test("is the same as JSON, indented with tabs", () => {
    const value = parse(text, { schema: "failsafe" });
    const numbers = (part: unknown): unknown => {
      if (Array.isArray(part)) return part.map(numbers);
      if (typeof part === "object" && part !== null)
        return Object.fromEntries(Object.entries(part).map(([key, under]) => [key, numbers(under)]));
      return /^[1-9]\d{0,6}$|^0$/.test(String(part)) ? Number(part) : part;
    };
    expect(puzzleOf(JSON.stringify(numbers(value), undefined, "\t"))).toEqual(puzzleOf(text));
  });
  test("is the same with other line ends and behind a byte order mark", () => {
    for (const other of [text.replace(/\n/g, "\r\n"), `\ufeff${text.replace(/\n/g, "\r")}`])
      expect(read(other)).toEqual(read(text));
  });
});
