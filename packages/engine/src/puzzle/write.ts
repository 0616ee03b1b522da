import { Document, isCollection, Scalar } from "yaml";
import { digitsOf } from "../board/digits.ts";
import type { Kind } from "../rules/contract.ts";
import { digitsText } from "../rules/in-words.ts";
import { kinds as allKinds, kindNamed } from "../rules/registry.ts";
import { cellAt, nameOf } from "./canvas.ts";
import { calledByDefault } from "./grids.ts";
import type { Consents, Draft, Grid, Setter } from "./puzzle.ts";
import { defaultBox } from "./regions.ts";

/** Characters to which several short instances of a rule share a line. */
const widest = 100;

/** A word, number or text on one line, as it stands behind a key. */
const line = (value: unknown): string => new Document(value).toString({ lineWidth: 0, blockQuote: false }).trimEnd();

/** Any value on one line, as it stands between braces and brackets, where commas need quotes. */
const inline = (value: unknown): string => {
  if (Array.isArray(value)) return `[${value.map(inline).join(", ")}]`;
  if (typeof value === "object" && value !== null)
    return `{ ${Object.entries(value)
      .map(([key, part]) => `${key}: ${inline(part)}`)
      .join(", ")} }`;
  const list = new Document([value]);
  if (isCollection(list.contents)) list.contents.flow = true;
  return list.toString({ lineWidth: 0, blockQuote: false, flowCollectionPadding: false }).trim().slice(1, -1);
};

/** What a block would not keep as it is: odd line ends, blanks before the first word, lines after the last. */
const wantsQuotes = /[\r\u0085\u2028\u2029]|^\s|\n\n$/;

/** A text under its key, as a block where it has lines. */
const textLines = (key: string, text: string): string => {
  if (!text.includes("\n") || wantsQuotes.test(text)) return `${key}: ${line(text)}`;
  const block = new Scalar(text);
  block.type = Scalar.BLOCK_LITERAL;
  return new Document({ [key]: block }).toString({ lineWidth: 0 }).trimEnd();
};

const permissionOf = (permission: Consents): unknown => {
  const said = Object.entries(permission).filter(([, consent]) => consent !== "unknown");
  const isOne = new Set(Object.values(permission)).size === 1;
  return isOne ? permission.show : Object.fromEntries(said);
};
const setterOf = ({ name, link, permission }: Setter): unknown => ({
  name,
  ...(link === undefined ? {} : { link }),
  permission: permissionOf(permission),
});
const setterLines = (setters: readonly Setter[]): string[] => {
  if (setters.length === 0) return [];
  if (setters.length === 1) return [`setter: ${inline(setterOf(setters[0]!))}`];
  return ["setter:", ...setters.map((setter) => `  - ${inline(setterOf(setter))}`)];
};

const rowsOf = <T>(cells: readonly T[], size: number): T[][] =>
  Array.from({ length: size }, (_, row) => cells.slice(row * size, (row + 1) * size));

const regionLines = ({ size, box, regions }: Grid): string[] => {
  const usual = defaultBox(size);
  if (box && usual?.rows === box.rows && usual.columns === box.columns) return [];
  if (box) return [`regions: boxes ${box.rows}x${box.columns}`];
  if (!regions) return ["regions: none"];
  return ["regions: |", ...rowsOf(regions, size).map((row) => `  ${row.join("")}`)];
};

const isUsual = ({ digits }: Grid): boolean => digits.every((digit, k) => digit === k + 1);

const gridLines = (grid: Grid, isOnly: boolean): string[] => {
  const { id, called, size, digits } = grid;
  const lines = [
    `id: ${line(id)}`,
    ...(called === calledByDefault(id, isOnly) ? [] : [`called: ${line(called)}`]),
    `size: ${size}`,
    ...(isOnly && grid.row === 1 && grid.column === 1 ? [] : [`at: ${nameOf(grid)}`]),
    ...(isUsual(grid) ? [] : [`digits: ${digitsText(digitsOf(digits))}`]),
    ...regionLines(grid),
  ];
  return lines.map((text, k) => `${k === 0 ? "  - " : "    "}${text}`);
};

/** A picture of the givens for each grid that holds some; where grids overlap the first has them. */
const givenLines = ({ canvas, grids, givens }: Draft): string[] => {
  const pictures = grids.flatMap((grid, index): string[] => {
    const places = Array.from({ length: grid.size * grid.size }, (_, k) => ({
      row: grid.row + Math.floor(k / grid.size),
      column: grid.column + (k % grid.size),
    }));
    const cells = places.map((place) => cellAt(canvas, place)!);
    const own = cells.map((cell) => (canvas.grids[cell]![0] === index ? givens.get(cell) : undefined));
    if (own.every((digit) => digit === undefined)) return [];
    const width = Math.max(...own.map((digit) => `${digit ?? "."}`.length));
    const rows = rowsOf(own, grid.size).map((row) =>
      row
        .map((digit) => `${digit ?? "."}`.padEnd(width))
        .join(" ")
        .trimEnd(),
    );
    return [`  ${line(grid.id)}: |`, ...rows.map((row) => `    ${row}`)];
  });
  return pictures.length === 0 ? [] : ["givens:", ...pictures];
};

/** Short instances together, up to a line's width. */
const shared = (name: string, terse: readonly string[]): string[] => {
  const lines: string[][] = [];
  for (const text of terse) {
    const last = lines.at(-1);
    if (last && name.length + [...last, text].join(", ").length <= widest - 8) last.push(text);
    else lines.push([text]);
  }
  return lines.map((list) => `  - ${name}: ${list.length === 1 ? list[0] : `[${list.join(", ")}]`}`);
};

const instanceLines = (name: string, bodies: readonly unknown[]): string[] => {
  const lines: string[] = [];
  let terse: string[] = [];
  const close = (): void => {
    lines.push(...shared(name, terse));
    terse = [];
  };
  for (const body of bodies) {
    if (typeof body === "string") terse.push(inline(body));
    else {
      close();
      lines.push(body === null ? `  - ${name}` : `  - ${name}: ${inline(body)}`);
    }
  }
  close();
  return lines;
};

/** The rules by kind, in the order in which the file first names the kinds. */
const ruleLines = ({ rules }: Draft, kinds: readonly Kind[]): string[] => {
  const bodies = new Map<string, unknown[]>();
  for (const { kind: name, body } of rules) {
    const kind = kindNamed(name, kinds);
    if (!kind) throw new Error(`${name} is no kind of rule`);
    bodies.set(name, [...(bodies.get(name) ?? []), kind.body.write(body)]);
  }
  return bodies.size === 0 ? [] : ["rules:", ...[...bodies].flatMap(([name, list]) => instanceLines(name, list))];
};

/**
 * The puzzle file as a person would have written it: reading it gives the same puzzle, each rule with the same id and
 * body. Rules of a kind stand together.
 */
export const write = (puzzle: Draft, { kinds = allKinds }: { readonly kinds?: readonly Kind[] } = {}): string => {
  const { title, wording, notes, grids } = puzzle;
  const lines = [
    "puzzle: 1",
    `title: ${line(title)}`,
    ...setterLines(puzzle.setters),
    ...(wording === undefined ? [] : [textLines("wording", wording)]),
    ...(notes === undefined ? [] : [textLines("notes", notes)]),
    ...(grids.length === 0 ? [] : ["grids:", ...grids.flatMap((grid) => gridLines(grid, grids.length === 1))]),
    ...givenLines(puzzle),
    ...ruleLines(puzzle, kinds),
  ];
  return `${lines.join("\n")}\n`;
};
