import { listed, type Puzzle } from "@solvewright/engine";

/** "by Maud Ferrier", with the link where there is one. */
export const creditOf = ({ setters }: Puzzle): string => {
  if (setters.length === 0) return "setter not named yet";
  return `by ${listed(setters.map(({ name, link }) => (link ? `${name} (${link})` : name)))}`;
};
