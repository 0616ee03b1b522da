import { type Board, introductions } from "@solvewright/engine";

/** What the rules beside rows, columns and regions are called, in the order of the show: "cages", "X marks". */
export const ruleNames = (board: Board): string[] => {
  const [, ...rules] = introductions(board);
  return rules.map(({ title }) => title.replace(/^[A-Z](?=[a-z])/, (letter) => letter.toLowerCase()));
};
