import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

const find = createRequire(import.meta.url);

/** CSS that embeds the variable Besley, so that a picture stands alone; a data URI of some 60 kB. */
export const besleyCss = (): string => {
  const file = readFileSync(find.resolve("@fontsource-variable/besley/files/besley-latin-wght-normal.woff2"));
  return `@font-face{font-family:"Besley Variable";font-weight:400 900;src:url(data:font/woff2;base64,${file.toString("base64")}) format("woff2")}`;
};
