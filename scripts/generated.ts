/** The documentation that is made from the registries, as file name and text: written by docs.ts, held by a test. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { editSchema, planSchema, schemaOf, takeSchema } from "@solvewright/engine";
import { publishedSchemas } from "../packages/cli/src/schemas/published.ts";
import { formatPage } from "./docs/format.ts";
import { galleryPage, galleryPictures } from "./docs/gallery.ts";
import { scripts } from "./docs/scripts.ts";
import { shownKinds } from "./docs/shown-kinds.ts";
import { techniquesPage } from "./docs/techniques.ts";

const part = (name: string): string =>
  readFileSync(fileURLToPath(new URL(`../docs/parts/${name}`, import.meta.url)), "utf8");

const json = (value: object): string => `${JSON.stringify(value, null, 2)}\n`;

/** Every generated file, by its name from the root of the project. */
export const generated = (): ReadonlyMap<string, string> => {
  const shown = shownKinds();
  return new Map([
    ["docs/schema/puzzle.schema.json", json(schemaOf())],
    ["docs/schema/plan.schema.json", json(planSchema())],
    ["docs/schema/take.schema.json", json(takeSchema())],
    ["docs/schema/edit.schema.json", json(editSchema())],
    ...[...publishedSchemas()].map(([name, schema]) => [`docs/schema/${name}.schema.json`, json(schema)] as const),
    ["docs/format.md", formatPage(part("format-head.md"), shown)],
    ...techniquesPage(),
    ...scripts(),
    ["docs/gallery.md", galleryPage(shown)],
    ...galleryPictures(shown),
  ]);
};
