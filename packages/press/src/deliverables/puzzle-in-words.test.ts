import { accept, compile, read } from "@solvewright/engine";
import { expect, test } from "vitest";
import { clueText } from "./puzzle-in-words.ts";

const said = (rule: string): string => {
  const text = `puzzle: 1\ntitle: T\nsetter: { name: us, permission: own }\ngrids: [{ id: main, size: 6 }]\nrules:\n  - ${rule}\n`;
  const board = compile(accept(read(text))!);
  return clueText(board, board.rules[0]!);
};

test.each([
  [
    "same-sum: { areas: [r2c1 r2c2, r2c5 r3c5] }",
    "Pair of equal sums: an area of row 2, columns 1 and 2, and an area of column 5, rows 2 and 3.",
  ],
  [
    "clone: { areas: [r1c1 r1c2, r3c4 r3c5, r6c1 r6c2] }",
    "Set of clones lettered a: an area of row 1, columns 1 and 2; an area of row 3, columns 4 and 5; and an area of row 6, columns 1 and 2.",
  ],
  [
    'own-rule: { says: "The middle one is the greatest.", cells: r2c3 r1c2 r2c1, drawn: dots }',
    "Setter's own rule: row 2, column 3; row 1, column 2; row 2, column 1.",
  ],
  ["cage: { cells: r1c1 r1c2, sum: 5 }", "Cage of 5: row 1, columns 1 and 2."],
])("%s is told without a picture", (rule, text) => expect(said(rule)).toBe(text));
