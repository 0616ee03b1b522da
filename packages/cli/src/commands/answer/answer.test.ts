import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { accept, fingerprint, read } from "@solvewright/engine";
import { expect, test } from "vitest";
import { asked } from "../../../test-kit/asked.ts";
import { answerSchema } from "../../schemas/answer.ts";

const folder = mkdtempSync(join(tmpdir(), "solvewright-"));
const file = (name: string, text: string): string => {
  writeFileSync(join(folder, name), text);
  return join(folder, name);
};
// By hand: the rows are 1234 3421 2143 4312.
const text =
  "puzzle: 1\ntitle: Small\nsetter: { name: us, permission: own }\ngrids:\n  - { id: main, size: 4 }\ngivens:\n  main: |\n    12.4\n    34..\n    2...\n    ..1.\n";
const puzzle = file("small.puzzle.yaml", text);

/** Every open cell settled in reading order, a second each from 60 s on; the slate flashes at 0. */
const digits = { r1c3: 3, r2c3: 2, r2c4: 1, r3c2: 1, r3c3: 4, r3c4: 3, r4c1: 4, r4c2: 3, r4c4: 2 };
const take = file(
  "small.take.json",
  JSON.stringify({
    take: 1,
    puzzle: fingerprint(accept(read(text))!),
    slate: 0,
    ends: 120,
    entries: Object.entries(digits).map(([cell, settle], k) => ({ at: 60 + k, cell, settle })),
  }),
);
const reply = async (...args: string[]) =>
  answerSchema.parse(JSON.parse((await asked(["answer", puzzle, ...args, "--json"])).out));

test("asks the viewer's question and answers it in the same place's words", async () => {
  const { code, out } = await asked(["answer", puzzle, "r1c3", "4"]);
  expect(code).toBe(0);
  expect(out).toMatch(/^Why can't row 1, column 3 be a 4\?\n\n.+\.\n$/s);
  expect(out).not.toContain("show");
});

test("with a take it says when the cell is settled, and where to watch it", async () => {
  const said = await reply("r2c4", "3", "--take", take, "--watch", "https://example.org/v?t={seconds}");
  expect(said.moment).toEqual({ seconds: 62, address: "https://example.org/v?t=62" });
  expect(said.reply).toContain("That cell is settled at 1:02 in the show: https://example.org/v?t=62");
});

test("an edit moves the time along", async () => {
  const edit = file("small.edit.yaml", "edit: 1\noffset: 0\ncuts:\n  - { from: 10, to: 40 }\n");
  expect((await reply("r2c4", "3", "--take", take, "--edit", edit)).moment).toEqual({ seconds: 32 });
});

test("a right digit is not confirmed as the answer", async () =>
  expect((await reply("r1c3", "3")).reply).not.toMatch(/\bis a 3\b/));

test("the picture is a PNG where its name says so", async () => {
  const picture = join(folder, "why.png");
  await asked(["answer", puzzle, "r1c3", "4", "--picture", picture]);
  expect([...readFileSync(picture).subarray(1, 4)].map((byte) => String.fromCharCode(byte)).join("")).toBe("PNG");
});

test.each([
  [["r1c3", "4", "--watch", "https://example.org/{seconds}"], "--take"],
  [["r9c9", "4"], "cell"],
])("%j is refused", async (args, said) => {
  const { code, err } = await asked(["answer", puzzle, ...args]);
  expect(code).toBe(2);
  expect(err).toContain(said);
});
