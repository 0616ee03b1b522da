import { listed, type Puzzle } from "@solvewright/engine";
import { oneLine } from "./texts.ts";

/** A changed puzzle is never presented as the setter's own. */
export const byWords = (isChanged = false): string => (isChanged ? "changed from a puzzle by" : "by");

/** "by Maud Ferrier", with the link where there is one; in one line. */
export const creditOf = ({ setters }: Puzzle, isChanged = false): string => {
  if (setters.length === 0) return "setter not named yet";
  return `${byWords(isChanged)} ${listed(setters.map(({ name, link }) => oneLine(link ? `${name} (${link})` : name)))}`;
};
