import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { kinds } from "@solvewright/engine";
import { expect, test } from "vitest";
import { named } from "./docs/techniques.ts";
import { generated } from "./generated.ts";

const root = fileURLToPath(new URL("../", import.meta.url));
const made = generated();
const written = (name: string): string => (existsSync(root + name) ? readFileSync(root + name, "utf8") : "");

test("docs are as the registries make them: run `npm run docs`", () => {
  for (const [name, text] of made) expect(written(name), `${name}: run \`npm run docs\``).toBe(text);
});

test("the gallery holds no picture of what is no kind", () => {
  const pictures = [...made.keys()].filter((name) => name.startsWith("docs/gallery/"));
  expect(
    readdirSync(`${root}docs/gallery`)
      .map((name) => `docs/gallery/${name}`)
      .sort(),
  ).toEqual(pictures.sort());
});

test.each(kinds)("$name has its heading in the format and its pictures in the gallery", ({ name }) => {
  expect(written("docs/format.md")).toContain(`\n### ${name}\n`);
  expect(written("docs/gallery.md")).toContain(`\n## ${name}\n`);
  for (const file of [`${name}.svg`, `${name}-obeys.svg`, `${name}-breaks.svg`])
    expect(written("docs/gallery.md")).toContain(`(gallery/${file})`);
});

test.each(named)("$name has its place among the techniques", ({ name, level }) => {
  expect(written("docs/techniques.md")).toMatch(new RegExp(`\n## ${name}\n\nLevel ${level}\\. \\w`));
});
