/** Unpacks the faces that pictures are set in, for programs that read TrueType only: packages/press/fonts. `npm run fonts` */
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { sfntOf } from "./sfnt-of.ts";

const at = (path: string): string => fileURLToPath(new URL(`../${path}`, import.meta.url));

/** Static weights come in hundreds; these are the ones that boards and pages use. */
const faces = { besley: [500, 600, 700, 800], commissioner: [500, 600] };
const subsets = ["latin", "latin-ext"];

const unpacked = (face: string, subset: string, weight: number): readonly [string, Buffer] => {
  const name = `${face}-${subset}-${weight}`;
  return [`${name}.ttf`, sfntOf(readFileSync(at(`node_modules/@fontsource/${face}/files/${name}-normal.woff`)))];
};

/** Each TrueType file by its name, as it should stand in packages/press/fonts. */
export const fonts = (): Map<string, Buffer> =>
  new Map(
    Object.entries(faces).flatMap(([face, weights]) =>
      subsets.flatMap((subset) => weights.map((weight) => unpacked(face, subset, weight))),
    ),
  );

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  mkdirSync(at("packages/press/fonts"), { recursive: true });
  for (const [name, font] of fonts()) writeFileSync(at(`packages/press/fonts/${name}`), font);
  for (const face of Object.keys(faces))
    copyFileSync(at(`node_modules/@fontsource/${face}/LICENSE`), at(`packages/press/fonts/LICENSE-${face}`));
}
