import { accept, type Board, compile, read } from "@solvewright/engine";

/** A small puzzle with one solution, solved in a few beats; `more` are further lines of the file, `title` is its title. */
export const fourByFour = ({ title = "Four", more = "" } = {}): Board =>
  compile(
    accept(
      read(`puzzle: 1
title: ${JSON.stringify(title)}
grids: [{ id: main, called: the grid, size: 4 }]
givens:
  main: |
    12.4
    34..
    2...
    ..1.
${more}`),
    )!,
  );
