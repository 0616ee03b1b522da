import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { basename } from "node:path";
import { faceFiles } from "./faces.ts";
import { lettersIn } from "./letters-in.ts";

const find = createRequire(import.meta.url);

/** CSS that embeds the variable Besley, so that a picture stands alone; a data URI of some 60 kB. */
export const besleyCss = (): string => {
  const file = readFileSync(find.resolve("@fontsource-variable/besley/files/besley-latin-wght-normal.woff2"));
  return `@font-face{font-family:"Besley Variable";font-weight:400 900;src:url(data:font/woff2;base64,${file.toString("base64")}) format("woff2")}`;
};

const besleyFiles = (): string[] => faceFiles().filter((file) => basename(file).startsWith("besley"));

/** The letters of a text that Besley lacks, each once. */
export const beyondBesley = (text: string): string[] => {
  const has = besleyFiles().map((file) => lettersIn(readFileSync(file)));
  return [...new Set(text)].filter((letter) => !has.some((letters) => letters.has(letter.codePointAt(0)!)));
};
