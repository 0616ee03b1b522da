import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { compile } from "@solvewright/engine";
import { puzzleOf } from "@solvewright/engine/test-kit";
import { type Font, openSync } from "fontkit";
import { describe, expect, test } from "vitest";
import { cases } from "../../../engine/test-kit/kind-files.ts";
import { extentOf } from "../scene/extent.ts";
import { runsOf } from "../scene/letters.ts";
import { figuresOf } from "../scene/scene.ts";
import { boardScene } from "./board-svg.ts";

const folder = dirname(createRequire(import.meta.url).resolve("@fontsource/besley/package.json"));
const besley = openSync(join(folder, "files/besley-latin-500-normal.woff")) as Font;

describe.each([...cases])("%s", (kind, { example }) => {
  const board = compile(puzzleOf(example.puzzle));
  const rules = board.rules.filter((rule) => rule.kind.name === kind);
  const { scene, extent } = boardScene(board, { ringed: board.rules.map(({ id }) => id) });
  const figures = figuresOf(scene);

  test("is seen on the board or said under it", () => {
    for (const { id, wholeGrid } of rules)
      expect(wholeGrid || figures.some(({ of, layer }) => of === id && layer !== "rim" && layer !== "ring")).toBe(true);
    if (rules.some(({ wholeGrid }) => wholeGrid))
      expect(scene.layers.some(({ name }) => name === "sentence")).toBe(true);
  });

  test("can be ringed where it is not of the whole grid", () => {
    const ringed = (id: string) =>
      figures.some(
        ({ of, layer, pen, fill }) =>
          of === id && ["ring", "rim"].includes(layer) && (pen?.paint ?? fill) === "rule-use",
      );
    for (const { id, cells } of rules) if (cells.length > 0) expect(ringed(id)).toBe(true);
  });

  test("has no letter that neither Besley nor we have", () => {
    const set = figures.flatMap((figure) => (figure.shape === "text" ? runsOf(figure.text, 500) : []));
    const letters = new Set(set.flatMap((run) => ("text" in run ? [...run.text] : [])));
    expect([...letters].filter((letter) => !besley.hasGlyphForCodePoint(letter.codePointAt(0)!))).toEqual([]);
  });

  test("lies inside the picture, at places that are numbers", () => {
    for (const figure of figures) {
      const { left, top, right, bottom } = extentOf(figure);
      expect([left, top, right, bottom].every(Number.isFinite)).toBe(true);
      expect(left >= extent.left && top >= extent.top && right <= extent.right && bottom <= extent.bottom).toBe(true);
    }
  });
});
