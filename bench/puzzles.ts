import { existsSync, readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { accept, type Board, compile, type Puzzle, read } from "@solvewright/engine";
import { root } from "./root.ts";

/** A puzzle to measure with. */
export interface Case {
  readonly name: string;
  readonly puzzle: Puzzle;
  readonly board: Board;
}

/** Puzzles of one sort. */
export interface Family {
  readonly name: string;
  readonly cases: readonly Case[];
}

const ending = ".puzzle.yaml";

export const puzzleIn = (text: string, name: string): Puzzle => {
  const puzzle = accept(read(text));
  if (!puzzle) throw new Error(`${name} is not a sound puzzle`);
  return puzzle;
};

export const caseIn = (file: string): Case => {
  const name = basename(file, ending);
  const puzzle = puzzleIn(readFileSync(file, "utf8"), file);
  return { name, puzzle, board: compile(puzzle) };
};

const filesIn = (folder: string): string[] =>
  readdirSync(folder)
    .filter((file) => file.endsWith(ending))
    .sort()
    .map((file) => join(folder, file));

/** The files of a folder, by what their names have before a number: killer-01 and killer-02 are of one family. */
export const filesByFamily = (folder: string): Map<string, string[]> => {
  const families = new Map<string, string[]>();
  for (const file of filesIn(folder)) {
    const family = basename(file, ending).replace(/-\d+$/, "");
    families.set(family, [...(families.get(family) ?? []), file]);
  }
  return families;
};

const emptyGrid = (size: number): Case => {
  const name = `${size}x${size}`;
  const text = `puzzle: 1\ntitle: ${name}\nsetter: { name: us, permission: own }\ngrids:\n  - { id: main, size: ${size} }\n`;
  const puzzle = puzzleIn(text, name);
  return { name, puzzle, board: compile(puzzle) };
};

/** An empty grid with boxes, of any size that the format allows. */
export const empty = emptyGrid;

/** Lines of 81 characters, digits and anything else for an open cell, as puzzles on one grid. */
const classicsIn = (file: string, every: number): Case[] => {
  const plain = emptyGrid(9);
  const lines = readFileSync(file, "utf8")
    .split("\n")
    .filter((line) => /^[.0-9]{81}/.test(line));
  return lines
    .filter((_, k) => k % every === 0)
    .map((line, k) => {
      const givens = new Map(
        [...line.slice(0, 81)].flatMap((char, cell) => (/[1-9]/.test(char) ? [[cell, +char]] : [])),
      );
      return {
        name: `${basename(file, ".txt")}-${k * every + 1}`,
        puzzle: { ...plain.puzzle, givens },
        board: { ...plain.board, givens },
      };
    });
};

const seventeens = join(root, "../shared/checks/seventeen-givens.txt");

/** All grids with 17 givens that the list has, or every so-manieth; none where the list is not there. */
export const seventeenGivens = (every: number): Case[] => (existsSync(seventeens) ? classicsIn(seventeens, every) : []);

export const hardClassics = (): Case[] => classicsIn(join(root, "checks/norvig-hardest.txt"), 1);
