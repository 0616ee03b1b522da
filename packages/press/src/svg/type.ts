import { faces } from "../tokens.ts";
import type { Attributes } from "./element.ts";

export type Face = keyof typeof faces;

/**
 * How type is asked for: `variable` as browsers know the faces; `static` by one family a weight, as the static fonts of
 * @fontsource name themselves and programs that pick a font file by its own name (PNG, PDF) need it.
 */
export type Setting = "variable" | "static";

const names: Readonly<Record<Face, string>> = { voice: "Besley", desk: "Commissioner" };
const cuts = [
  [500, " Medium"],
  [600, " SemiBold"],
  [700, ""],
  [800, " ExtraBold"],
] as const;

/** The family of the nearest weight that there is as a font of its own. */
const staticType = (face: Face, weight: number): Attributes => {
  const [cut, name] = cuts.reduce((best, other) =>
    Math.abs(other[0] - weight) < Math.abs(best[0] - weight) ? other : best,
  );
  return { "font-family": `${names[face]}${name}`, "font-weight": String(cut) };
};

/** The face that a picture's root asks for; texts of another ask for their own. */
export const rootFace: Face = "voice";

const variableType = (face: Face, weight: number): Attributes => ({
  "font-family": face === rootFace ? undefined : faces[face],
  "font-weight": String(weight),
});

export const typeOf = (setting: Setting, face: Face, weight: number): Attributes =>
  setting === "static" ? staticType(face, weight) : variableType(face, weight);
