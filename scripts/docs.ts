/** Writes what is made from the registries: docs/schema, format.md, techniques.md, gallery.md and its pictures. `npm run docs` */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { generated } from "./generated.ts";

const root = fileURLToPath(new URL("../", import.meta.url));
for (const [name, text] of generated()) {
  mkdirSync(dirname(join(root, name)), { recursive: true });
  writeFileSync(join(root, name), text);
}
