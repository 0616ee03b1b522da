import { dirname } from "node:path";
import { type Board, digitAt, type Knowledge, type Step } from "@solvewright/engine";
import { boardSvg } from "@solvewright/press";
import { besleyCss, pngOf } from "@solvewright/press/files";
import { toDisk } from "../../to-disk.ts";
import { writeWhole } from "../../write-whole.ts";

/** The digits that stand before the last step: those on the board and those that the steps before it place. */
const settledBefore = ({ canvas }: Board, known: Knowledge, steps: readonly Step[]): Record<string, number> => {
  const standing = canvas.names.flatMap((name, cell): [string, number][] => {
    const digit = digitAt(known, cell);
    return digit === undefined ? [] : [[name, digit]];
  });
  return Object.assign(Object.fromEntries(standing), ...steps.map(({ places }) => places));
};

/** The last link of an answer with its reason drawn, and the marks that it leans on. */
export const drawTo = (file: string, board: Board, known: Knowledge, steps: readonly Step[]): Promise<void> => {
  const [last] = steps.slice(-1);
  const settled = settledBefore(board, known, steps.slice(0, -1));
  const leansOn = Object.entries(last?.because.facts ?? {}).filter(([cell]) => settled[cell] === undefined);
  const isPng = /\.png$/i.test(file);
  const svg = boardSvg(board, {
    ...(isPng ? {} : { fontCss: besleyCss() }),
    painted: true,
    written: { settled, marks: Object.fromEntries(leansOn) },
    ...(last ? { step: last } : {}),
  });
  return toDisk(dirname(file), () => writeWhole(file, isPng ? pngOf(svg) : svg));
};
