import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import type { Board } from "@solvewright/engine";
import { clashPicture, differPictures } from "@solvewright/press";
import { besleyCss } from "@solvewright/press/files";
import { toDisk } from "../../to-disk.ts";
import { writeWhole } from "../../write-whole.ts";
import type { Finding } from "./finding.ts";

/** What a finding has to show, by file name: two solutions that differ, or a clash. */
const picturesOf = (board: Board, { soundness, clash }: Finding): [name: string, svg: string][] => {
  const style = { fontCss: besleyCss() };
  if (clash) return [["clash.svg", clashPicture(board, clash, style)]];
  const [first, second] = soundness ? differPictures(board, soundness, style) : [];
  return first && second
    ? [
        ["first-solution.svg", first],
        ["second-solution.svg", second],
      ]
    : [];
};

/** Draws a finding; gives back the names of the files that it wrote. */
export const drawTo = (folder: string, board: Board, finding: Finding): Promise<string[]> =>
  toDisk(folder, async () => {
    const pictures = picturesOf(board, finding);
    if (pictures.length > 0) await mkdir(folder, { recursive: true });
    for (const [name, svg] of pictures) await writeWhole(join(folder, name), svg);
    return pictures.map(([name]) => join(folder, name));
  });
