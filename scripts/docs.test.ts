import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { kinds } from "@solvewright/engine";
import { expect, test } from "vitest";
import { generated } from "./generated.ts";

const root = fileURLToPath(new URL("../", import.meta.url));

test("docs are as the registries make them: run `npm run docs`", async () => {
  for (const [name, text] of await generated())
    expect(existsSync(root + name) ? readFileSync(root + name, "utf8") : "", name).toBe(text);
});

test.each(kinds)("$name has its heading in the format and its pictures in the gallery", ({ name }) => {
  expect(readFileSync(`${root}docs/format.md`, "utf8")).toContain(`\n### ${name}\n`);
  for (const file of [`${name}.svg`, `${name}-obeys.svg`, `${name}-breaks.svg`])
    expect(readdirSync(`${root}docs/gallery`)).toContain(file);
});
