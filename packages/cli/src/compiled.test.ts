import { mkdtempSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { expect, test } from "vitest";
import { compiled } from "./compiled.ts";

const folder = mkdtempSync(join(tmpdir(), "solvewright-"));

/** What a program comes to with this compiled code beside it; each is another text, as V8 remembers those it has seen. */
const ran = (name: string, code?: Buffer | string) => {
  const program = join(folder, `${name}.js`);
  writeFileSync(program, `module.exports = [require("node:path").basename(__filename), (() => "${name}")()];`);
  if (code !== undefined) writeFileSync(`${program}.cache`, code);
  const module: { exports?: unknown } = {};
  const script = compiled(program);
  script.runInThisContext()(module, createRequire(program), program);
  expect(module.exports).toEqual([basename(program), name]);
  return { rejected: script.cachedDataRejected, code: script.createCachedData() };
};

test("a program runs without compiled code, with its own, with another's and with what is none", () => {
  const { rejected, code } = ran("plain");
  expect(rejected).toBeUndefined();
  expect(ran("plain", code).rejected).toBe(false);
  expect(ran("another's", code).rejected).toBe(true);
  expect(ran("half of it", code.subarray(0, code.length >> 1)).rejected).toBe(true);
  expect(ran("no code", "no code").rejected).toBe(true);
});
