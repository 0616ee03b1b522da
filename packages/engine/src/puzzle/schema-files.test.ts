import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { parse } from "yaml";
import * as z from "zod";
import { schemaOf } from "./schema.ts";

const judge = z.fromJSONSchema(JSON.parse(JSON.stringify(schemaOf())));

/** Our examples, and the cases that are shared between projects where they are at hand. */
const folders = [fileURLToPath(new URL("../../../../examples/", import.meta.url)), "/work/shared/cases/"];
const files = folders
  .filter((folder) => existsSync(folder))
  .flatMap((folder) => readdirSync(folder).map((name) => folder + name))
  .filter((file) => file.endsWith(".puzzle.yaml"));

test.each(files)("the schema takes %s", (file) =>
  expect(judge.safeParse(parse(readFileSync(file, "utf8"))).error).toBeUndefined(),
);

test("the schema refuses a misspelt kind, a body of another shape and an unknown key of one", () => {
  const fits = (rule: string): boolean =>
    judge.safeParse(parse(`puzzle: 1\ngrids: [{ id: main, size: 4 }]\nrules:\n  - ${rule}\n`)).success;
  expect(fits("thermometer: r1c1-r1c3")).toBe(true);
  for (const rule of ["thermometre: r1c1-r1c3", "cage: { sum: 3 }", "cage: { cells: r1c1 r1c2, suum: 3 }"])
    expect(fits(rule), rule).toBe(false);
});
