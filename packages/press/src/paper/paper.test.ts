import { describe, expect, test } from "vitest";
import { heightOf, type Row } from "./block.ts";
import { balancedHeight, columnsOf } from "./columns.ts";
import { safeLink } from "./safe-link.ts";
import { runWidth, type Style, setLines } from "./typeset.ts";

const style: Style = { face: "desk", weight: 500, size: 10, fill: "ink" };
const textsOf = (text: string, width: number): string[] =>
  setLines([{ text, style }], width).map((line) => line.map((run) => run.text).join(" "));

describe("lines", () => {
  const text = "Every row, column and box holds the digits from 1 to 9 once each, and so do the shaded windows.";
  test.each([60, 120, 240])("none is wider than %i points and no word is lost", (width) => {
    const lines = textsOf(text, width);
    expect(lines.join(" ")).toBe(text);
    for (const line of lines) expect(runWidth({ text: line, style })).toBeLessThanOrEqual(width + 1e-9);
  });
  test("a word that is too long for a line is cut and loses no letter", () => {
    const word = "x".repeat(300);
    const lines = textsOf(word, 80);
    expect(lines.join("")).toBe(word);
    for (const line of lines) expect(runWidth({ text: line, style })).toBeLessThanOrEqual(80);
  });
  test("words of another look go on behind those before", () => {
    const bold = { ...style, weight: 600 };
    const [line] = setLines(
      [
        { text: "Cages", style: bold },
        { text: "do not repeat.", style, before: 4 },
      ],
      400,
    );
    const [first, second] = line!;
    expect(second!.x).toBeCloseTo(runWidth(first!) + runWidth({ text: " ", style }) + 4);
  });
});

const row = (height: number, keepsWithNext = false): Row => ({ height, keepsWithNext, draw: () => "x" });

describe("columns", () => {
  const rows = [row(10, true), row(10), row(10), row(10, true), row(10), row(10)];
  test("every row stands in one of them, in order, and none is too high", () => {
    const columns = columnsOf(rows, [25, 40]);
    expect(columns.flat()).toEqual(rows);
    expect(heightOf(columns[0]!)).toBeLessThanOrEqual(25);
    for (const column of columns.slice(1)) expect(heightOf(column)).toBeLessThanOrEqual(40);
  });
  test("none ends with a row that keeps with the next", () => {
    for (const column of columnsOf(rows, [35])) expect(column.at(-1)!.keepsWithNext).toBe(false);
  });
  test("a row higher than a column stands alone", () =>
    expect(columnsOf([row(10), row(90), row(10)], [50]).map(({ length }) => length)).toEqual([1, 1, 1]));
  test("balanced columns are enough and as low as they can be", () => {
    const height = balancedHeight(rows, 2);
    expect(columnsOf(rows, [height]).length).toBe(2);
    expect(height).toBeLessThan(31.5);
  });
});

test.each(["https://example.org/a?b=c", "http://example.org", "mailto:maud@example.org"])("%s is a link", (link) =>
  expect(safeLink(link)).toBe(link),
);
test.each([
  "javascript:alert(1)",
  " JavaScript:alert(1)",
  "data:text/html,x",
  "file:///etc/passwd",
  "//example.org",
  "https://example.org/ onclick=x",
  'https://a"b',
  "example.org",
  "",
])("%s stays text", (link) => expect(safeLink(link)).toBeUndefined());
