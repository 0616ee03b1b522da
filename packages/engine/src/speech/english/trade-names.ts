import { capital } from "./counts.ts";

/** What the field calls a pattern (common practice); single digits and the reading of clues go without a name. */
const names: Readonly<Record<string, string>> = {
  "naked-pair": "a naked pair",
  "naked-triple": "a naked triple",
  "naked-quad": "a naked quad",
  "hidden-pair": "a hidden pair",
  "hidden-triple": "a hidden triple",
  locked: "locked candidates",
  "x-wing": "an X-wing",
  swordfish: "a swordfish",
  jellyfish: "a jellyfish",
  "xy-wing": "an XY-wing",
  "xyz-wing": "an XYZ-wing",
  "w-wing": "a W-wing",
  "simple-colouring": "simple colouring",
  "remote-pair": "a remote pair",
};

/** How a pattern is named after its reason: at its first meeting, or where it was met in an earlier show. */
export const nameSaid = (technique: string, isMet: boolean): string | undefined => {
  const name = names[technique];
  if (name === undefined) return undefined;
  return isMet ? `${capital(name)} again.` : `That's called ${name}.`;
};
