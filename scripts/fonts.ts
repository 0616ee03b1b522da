/** Unpacks the faces that pictures are set in, for programs that read TrueType only: packages/press/fonts. `npm run fonts` */
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { sfntOf } from "./sfnt-of.ts";

const at = (path: string): string => fileURLToPath(new URL(`../${path}`, import.meta.url));

/** Static weights come in hundreds; these are the four that boards use. */
const weights = [500, 600, 700, 800];
const subsets = ["latin", "latin-ext"];

/** Each TrueType file by its name, as it should stand in packages/press/fonts. */
export const fonts = (): Map<string, Buffer> =>
  new Map(
    subsets.flatMap((subset) =>
      weights.map((weight) => {
        const name = `besley-${subset}-${weight}`;
        const woff = readFileSync(at(`node_modules/@fontsource/besley/files/${name}-normal.woff`));
        return [`${name}.ttf`, sfntOf(woff)] as const;
      }),
    ),
  );

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  mkdirSync(at("packages/press/fonts"), { recursive: true });
  for (const [name, font] of fonts()) writeFileSync(at(`packages/press/fonts/${name}`), font);
  copyFileSync(at("node_modules/@fontsource/besley/LICENSE"), at("packages/press/fonts/LICENSE"));
}
