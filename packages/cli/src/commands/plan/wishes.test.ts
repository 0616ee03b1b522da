import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Plan } from "@solvewright/engine";
import { expect, test } from "vitest";
import { asked } from "../../../test-kit/asked.ts";

const puzzle = fileURLToPath(new URL("../../../../../examples/rain-gauge.puzzle.yaml", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "solvewright-"));

const wishes = (name: string, text: string): string => {
  const path = join(folder, `${name}.wishes.yaml`);
  writeFileSync(path, text);
  return path;
};
const planned = async (...args: string[]): Promise<Plan> =>
  JSON.parse((await asked(["plan", puzzle, ...args, "--json"])).out);
const lastPlaced = ({ steps }: Plan): string =>
  Object.keys(steps.findLast(({ places }) => Object.keys(places)[0])!.places)[0]!;
const order = ({ steps }: Plan): string[] => steps.flatMap(({ places }) => Object.keys(places));

test("a cell that is wished first comes earlier, and the plan says where it can't be first", async () => {
  const plain = await planned();
  const cell = lastPlaced(plain);
  const list = wishes("first", `wishes: 1\nask:\n  - { wish: first, cell: ${cell} }\n`);
  const bent = await planned("--wishes", list);
  expect(order(bent).indexOf(cell)).toBeLessThan(order(plain).indexOf(cell));
  const { code, out } = await asked(["plan", puzzle, "--wishes", list]);
  expect(code).toBe(0);
  expect(out.includes("Not as wished (first):")).toBe(bent.unmet.length > 0);
});

test("what the audience has met is met no more", async () => {
  const plain = await planned();
  const [known] = plain.meets;
  const bent = await planned("--wishes", wishes("met", `wishes: 1\nmet: [${known}]\n`));
  expect(bent.meets).toEqual(plain.meets.filter((name) => name !== known));
});

test("a faulty list is told with its line, and no such list too", async () => {
  const faulty = await asked(["plan", puzzle, "--wishes", wishes("faulty", "wishes: 1\nask:\n  - { wish: frist }\n")]);
  expect(faulty.code).toBe(2);
  expect(faulty.err).toContain("Line 3, column 13: frist");
  expect((await asked(["plan", puzzle, "--wishes", join(folder, "nowhere")])).code).toBe(2);
});
