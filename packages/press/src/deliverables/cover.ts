import { type Board, capital, listed } from "@solvewright/engine";
import { boardScene, boardSvg } from "../board/board-svg.ts";
import { coloursOf } from "../colours.ts";
import { type Extent, together } from "../scene/extent.ts";
import { widthOf, wrapped } from "../scene/letters.ts";
import { element, escaped } from "../svg/element.ts";
import { type Setting, typeOf } from "../svg/type.ts";
import { byWords } from "./credit.ts";
import { ruleNames } from "./rule-names.ts";
import { oneLine } from "./texts.ts";

/** 1280x720 is what video sites ask for (common practice). In pixels, from the top left. */
const size = { width: 1280, height: 720 };
/** What must not be cut off at the sides of a small screen. */
const safe = 56;
/** The panel's right edge, above and below. */
const slant = { top: 650, bottom: 554 };
const boardFrom = slant.bottom - 10;
const textWidth = slant.bottom - 2 * safe + 10;
const large = 96;
const small = 44;
const mostLines = 3;
/** From line to line of the title, in its letters: what hangs down stays clear of what stands up. */
const titleLeading = 1.08;
/** Below the title: its letters, and from line to line. */
const lettersBelow = 26;
const leading = 38;

/** Pixels a cell: a board that needs smaller ones than `least` to be shown whole is shown in part. */
const least = 80;
const close = 112;

const room = { width: size.width - slant.top, height: size.height };

const sharedExtent = ({ canvas }: Board): Extent | undefined =>
  together(
    canvas.places
      .filter((_, cell) => canvas.grids[cell]!.length > 1)
      .map(({ row, column }) => ({ left: column - 1, top: row - 1, right: column, bottom: row })),
  );

interface Shot {
  readonly window: Extent;
  readonly cell: number;
}

/** A small board whole, a large one close by, where its grids overlap or in its middle. */
const shotOf = (board: Board): Shot => {
  const { extent } = boardScene(board, { sentences: false });
  const [width, height] = [extent.right - extent.left, extent.bottom - extent.top];
  const whole = Math.min((room.width - safe) / width, (room.height - safe) / height);
  const isWhole = whole >= least;
  const cell = isWhole ? whole : close;
  const { left, right, top, bottom } = isWhole ? extent : (sharedExtent(board) ?? extent);
  const middle = [(left + right) / 2, (top + bottom) / 2] as const;
  // The middle of what the panel leaves free.
  const before = (slant.top + room.width / 2 - boardFrom) / cell;
  const from = { left: middle[0] - before, top: middle[1] - size.height / 2 / cell };
  const wide = (size.width - boardFrom) / cell;
  return { cell, window: { ...from, right: from.left + wide, bottom: from.top + size.height / cell } };
};

const breakable = (word: string): string[] => word.match(/.{1,16}/gsu) ?? [];

/** Words in lines that are no wider, in units of the letters' size; a word too long for a line is cut. */
const linesWithin = (text: string, width: number): string[] =>
  wrapped(text.split(" ").flatMap(breakable).join(" "), 600, width);

/** The title as large as it can be in three lines; what is longer still is cut short. */
const titleIn = (title: string): { readonly lines: readonly string[]; readonly letters: number } => {
  for (let letters = large; letters >= small; letters -= 4) {
    const lines = linesWithin(title, textWidth / letters);
    const fits = lines.length <= mostLines && lines.every((line) => widthOf(line, 600) * letters <= textWidth);
    if (fits) return { lines, letters };
  }
  const lines = linesWithin(title.slice(0, 200), textWidth / small).slice(0, mostLines);
  return { lines: [...lines.slice(0, -1), `${lines.at(-1)}…`], letters: small };
};

interface Type {
  readonly letters: number;
  readonly weight: number;
  readonly setting: Setting;
}

const written = (text: string, y: number, { letters, weight, setting }: Type): string =>
  element(
    "text",
    {
      x: String(safe),
      y: String(Math.round(y)),
      "font-size": String(letters),
      fill: coloursOf("light")("on-spruce"),
      ...typeOf(setting, "voice", weight),
    },
    escaped(text),
  );

const mostLinesBelow = 2;
const fitsBelow = (text: string): boolean => linesWithin(text, textWidth / lettersBelow).length <= mostLinesBelow;

/** The rules by name, as many as fit: no name is cut. */
const headings = (board: Board): string => {
  const names = ruleNames(board);
  const texts = names.map((_, k) => (k === 0 ? listed(names) : `${names.slice(0, -k).join(", ")} and more`));
  return capital(texts.find(fitsBelow) ?? listed(names));
};

const by = ({ puzzle: { setters } }: Board, isChanged: boolean): string[] =>
  setters.length === 0 ? [] : [oneLine(`${byWords(isChanged)} ${setters.map(({ name }) => name).join(" and ")}`)];

const shortened = (text: string): string[] => {
  const lines = linesWithin(text, textWidth / lettersBelow);
  return lines.length <= mostLinesBelow ? lines : [lines[0]!, `${lines[1]!.replace(/,?\s?\S*$/, "")} …`];
};

const texts = (board: Board, setting: Setting, isChanged: boolean): string => {
  const { lines, letters } = titleIn(oneLine(board.puzzle.title));
  const below = [...by(board, isChanged), headings(board)].filter((text) => text !== "").flatMap(shortened);
  const step = letters * titleLeading;
  const height = lines.length * step + below.length * leading;
  const top = (size.height - height) / 2 + letters * 0.75;
  const afterTitle = top + (lines.length - 1) * step + 58;
  return [
    ...lines.map((text, k) => written(text, top + k * step, { letters, weight: 600, setting })),
    ...below.map((text, k) => written(text, afterTitle + k * leading, { letters: lettersBelow, weight: 500, setting })),
  ].join("\n");
};

/**
 * The picture for the video's cover: clues as the setter gave them and no digit of the solution, the title where a
 * small screen cuts nothing off.
 */
export const coverSvg = (
  board: Board,
  {
    setting = "variable",
    fontCss,
    isChanged = false,
  }: { setting?: Setting; fontCss?: string; isChanged?: boolean } = {},
): string => {
  const colours = coloursOf("light");
  const { window, cell } = shotOf(board);
  const drawn = boardSvg(board, { window, cell, setting, sentences: false, ground: "desk", painted: true });
  const panel = `0,0 ${slant.top},0 ${slant.bottom},${size.height} 0,${size.height}`;
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${size.width} ${size.height}`,
      width: String(size.width),
      height: String(size.height),
      role: "img",
      "aria-label": `Cover: ${oneLine(board.puzzle.title)}`,
    },
    [
      fontCss ? element("style", {}, escaped(fontCss)) : "",
      element("rect", { width: String(size.width), height: String(size.height), fill: colours("desk") }),
      drawn.replace("<svg", `<svg x="${boardFrom}" y="0"`),
      element("polygon", { points: panel, fill: colours("spruce") }),
      texts(board, setting, isChanged),
    ].join("\n"),
  );
};
