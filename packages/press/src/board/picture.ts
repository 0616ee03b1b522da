import { type Board, nameOf, type Place, type Step } from "@solvewright/engine";
import type { Paint } from "../colours.ts";
import { type Extent, extentOf, grown, together } from "../scene/extent.ts";
import type { Figure } from "../scene/figure.ts";
import type { LetteredReason } from "../step/letters.ts";
import { type Reading, readingOf, type Writes } from "../step/reading.ts";
import type { Colour } from "../tokens.ts";
import { clueFigures } from "./clues.ts";
import { lineFigures } from "./lines.ts";
import { withRoomOutside } from "./outside-room.ts";
import type { Wash } from "./pointers.ts";
import { runsThroughCells } from "./rings.ts";
import { type Room, roomIn } from "./room.ts";
import { sheetAt, sheetFigures } from "./sheets.ts";
import { type Clue, cluesOf, placeNamed, type Subject } from "./subject.ts";
import type { Written } from "./written.ts";

/** What may be shown on a board beside the puzzle itself. Cells are named as in files. */
export interface View {
  /** What stands on the board, before the step. */
  readonly written?: Written;
  /** A step, or several that are said together: what the first digits rest on is drawn with what follows next. */
  readonly step?: Step | readonly Step[];
  /** Digits that follow later in the step's beat. */
  readonly next?: Readonly<Record<string, number>>;
  /** Marks that are written when it is said. */
  readonly writes?: Writes;
  readonly letters?: readonly LetteredReason[];
  /** Rules ringed without a step: what a rule's own beat shows. */
  readonly ringed?: readonly string[];
  /** The id of the grid that the lens holds. */
  readonly lens?: string;
  /** Where two solutions differ; the other digits step back. */
  readonly differ?: readonly string[];
  readonly chosen?: readonly string[];
  readonly pointing?: readonly string[];
  readonly shading?: Readonly<Partial<Record<Wash, readonly string[]>>>;
  readonly slips?: readonly string[];
  readonly leaps?: readonly string[];
  /** Cells for which nothing is left. */
  readonly clashes?: readonly string[];
  /** Sentences of rules that no drawing says; shown where not said otherwise. */
  readonly sentences?: boolean;
  /** Canvas row and column numbers along the edges. */
  readonly coordinates?: boolean;
}

/** A view of a board with everything looked up that its parts ask for. */
export interface Picture {
  readonly subject: Subject;
  /** Houses and rules can be named where the subject is a whole board. */
  readonly board?: Board;
  readonly view: View;
  /** The colour behind the board. */
  readonly ground: Colour;
  readonly clues: readonly Clue[];
  /** Sheets, lines and clues: what the puzzle itself is. */
  readonly puzzle: readonly Figure[];
  /** Round the puzzle and whatever a step may add at its edge. */
  readonly extent: Extent;
  readonly reading: Reading;
  room(cell: string): Room;
  sheet(cell: string): Paint;
}

const remembered = <T>(find: (key: string) => T): ((key: string) => T) => {
  const found = new Map<string, T>();
  return (key) => {
    if (!found.has(key)) found.set(key, find(key));
    return found.get(key)!;
  };
};

const isBoard = (subject: Subject): subject is Board => "house" in subject;

/** Brackets, rings and frames reach that far beyond the grids. */
export const margin = 0.14;
const nothing: Extent = { left: 0, top: 0, right: 1, bottom: 1 };

const middle = ({ row, column }: Place): readonly [number, number] => [column - 0.5, row - 0.5];

/** The cells through which a ring of one of these rules runs. */
const ringedCells = (clues: readonly Clue[], rules: readonly string[]): ReadonlySet<string> =>
  new Set(
    clues
      .filter(({ id, shapes }) => rules.includes(id) && runsThroughCells(shapes))
      .flatMap(({ cells }) => cells.map(nameOf)),
  );

export const pictureOf = (subject: Subject, view: View, ground: Colour): Picture => {
  const { canvas } = subject.puzzle;
  const clues = cluesOf(subject);
  const puzzle = [
    ...sheetFigures(canvas),
    ...withRoomOutside(
      clues.map((clue) => ({ figures: clueFigures(clue, canvas), cells: clue.cells })),
      canvas.places,
    ),
    ...lineFigures(subject.puzzle, view.lens),
  ];
  const reading = readingOf({ ...view, steps: [view.step ?? []].flat() });
  const ringed = ringedCells(clues, [...(view.ringed ?? []), ...reading.rules]);
  const roomOf = (cell: string): Room => {
    const room = roomIn(placeNamed(cell), clues);
    return { ...room, crossed: room.crossed || ringed.has(cell) };
  };
  return {
    subject,
    ...(isBoard(subject) ? { board: subject } : {}),
    view,
    ground,
    clues,
    puzzle,
    extent: grown(together(puzzle.map(extentOf)) ?? nothing, margin),
    reading,
    room: remembered(roomOf),
    sheet: (cell) => sheetAt(canvas, middle(placeNamed(cell))),
  };
};
