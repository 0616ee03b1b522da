import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { lettersIn } from "./letters-in.ts";

const find = createRequire(import.meta.url);

const folder = (): string => dirname(find.resolve("@solvewright/press/fonts/besley-latin-500.ttf"));

/** The static weights as TrueType files, for programs that load no other (scripts/fonts.ts makes them). */
export const faceFiles = (): string[] =>
  readdirSync(folder())
    .filter((name) => name.endsWith(".ttf"))
    .sort()
    .map((name) => join(folder(), name));

/** A face for the letters of other scripts, which ours lack. */
const spare = "DejaVu Sans";

export const spareFile = (): string => find.resolve("dejavu-fonts-ttf/ttf/DejaVuSans.ttf");

const weights: Readonly<Record<string, string>> = {
  "Besley Medium": "besley-latin-500",
  "Besley SemiBold": "besley-latin-600",
  Besley: "besley-latin-700",
  "Besley ExtraBold": "besley-latin-800",
  "Commissioner Medium": "commissioner-latin-500",
  "Commissioner SemiBold": "commissioner-latin-600",
};

const extended = (name: string): string => name.replace("-latin-", "-latin-ext-");

/** The font file of a family's name; one of `Ext` has the letters of more languages. */
export const fontFor = (family: string): string => {
  if (family === spare) return spareFile();
  const name = weights[family.replace(/ Ext$/, "")] ?? weights.Besley!;
  return join(folder(), `${family.endsWith(" Ext") ? extended(name) : name}.ttf`);
};

const known = new Map<string, ReadonlySet<number>>();
const has = (family: string, letter: string): boolean => {
  const file = fontFor(family);
  if (!known.has(file)) known.set(file, lettersIn(readFileSync(file)));
  return known.get(file)!.has(letter.codePointAt(0)!);
};

const familyFor = (letter: string, family: string): string =>
  [family, `${family} Ext`, spare].find((face) => has(face, letter)) ?? spare;

/** Letters in the family that has them; those of one family together. */
const inFamilies = (text: string, family: string): string => {
  let [written, last] = ["", family];
  for (const letter of text) {
    const face = familyFor(letter, family);
    if (face !== last) {
      if (last !== family) written += "</tspan>";
      if (face !== family) written += `<tspan font-family="${face}">`;
    }
    written += letter;
    last = face;
  }
  return last === family ? written : `${written}</tspan>`;
};

/** A page whose letters all have a font: those that its own lacks are taken from another. */
export const withEveryLetter = (page: string): string =>
  page.replace(
    /(<(?:text|tspan)[^>]*font-family="([^"]+)"[^>]*>)([^<]*)/g,
    (_, tag: string, family: string, text: string) => {
      return tag + inFamilies(text, family);
    },
  );
