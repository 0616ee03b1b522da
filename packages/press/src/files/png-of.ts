import { Resvg } from "@resvg/resvg-js";
import { withoutTurns } from "../deliverables/texts.ts";
import { beyondBesley } from "./besley.ts";
import { faceFiles, spareFile } from "./faces.ts";

/** What is set in letters: the text elements' content. */
const textsIn = (svg: string): string => [...svg.matchAll(/<text[^>]*>([^<]*)/g)].map(([, text]) => text).join("");

const isForeign = (svg: string): boolean => beyondBesley(textsIn(svg)).length > 0;

/**
 * An SVG in the static setting as PNG. Its letters come from our own fonts, so that it looks the same everywhere; only
 * where a text has letters that those lack, a spare face and the machine's own are asked too, since a letter would
 * vanish silently.
 */
export const pngOf = (svg: string): Uint8Array =>
  new Resvg(withoutTurns(svg), {
    font: {
      fontFiles: [...faceFiles(), ...(isForeign(svg) ? [spareFile()] : [])],
      loadSystemFonts: isForeign(svg),
      defaultFontFamily: "Besley",
    },
  })
    .render()
    .asPng();
