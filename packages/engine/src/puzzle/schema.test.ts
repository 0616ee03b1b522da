import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import * as z from "zod";
import { cases } from "../../test-kit/kind-files.ts";
import { kinds } from "../rules/registry.ts";
import { schemaOf } from "./schema.ts";

// The JSON is what is published, so the JSON is what is tried, by reading it back.
const published = JSON.parse(JSON.stringify(schemaOf()));
const judge = z.fromJSONSchema(published);
const fits = (text: string): boolean => judge.safeParse(parse(text)).success;

test("is JSON Schema 2020-12", () => expect(published.$schema).toBe("https://json-schema.org/draft/2020-12/schema"));

describe.each(kinds)("$name", ({ name, body }) => {
  test("has its form in it", () =>
    expect(JSON.stringify(published)).toContain(JSON.stringify(`${name}: ${body.form}`)));
  test("takes its cases", () => {
    for (const text of cases.get(name)?.boards ?? []) expect(fits(text), text).toBe(true);
  });
});

const folder = fileURLToPath(new URL("./bad/", import.meta.url));
const form = ["kind-misspelt", "permission-unknown"];
test.each(readdirSync(folder).filter((name) => form.some((start) => name.startsWith(start))))("refuses %s", (name) =>
  expect(fits(readFileSync(folder + name, "utf8"))).toBe(false),
);

const sound = "puzzle: 1\ntitle: T\ngrids: [{ id: main, size: 4 }]\n";
test.each([
  ["another version", sound.replace("puzzle: 1", "puzzle: 2")],
  ["an unknown key", `${sound}rulez: []\n`],
  ["no grids", "puzzle: 1\n"],
  ["a huge size", sound.replace("size: 4", "size: 400")],
  ["an unknown key of a rule", `${sound}rules: [cage: { cells: r1c1, some: 3 }]\n`],
  ["a rule without what it needs", `${sound}rules: [cage: { sum: 3 }]\n`],
  ["a path of words", `${sound}rules: [thermometer: from here to there]\n`],
])("refuses %s", (_, text) => {
  expect(fits(sound)).toBe(true);
  expect(fits(text)).toBe(false);
});
