import { type Board, compile, type Step } from "@solvewright/engine";
import { puzzleOf } from "@solvewright/engine/test-kit";
import { describe, expect, test } from "vitest";
import { extentOf } from "../scene/extent.ts";
import type { Figure, LayerName, Paths } from "../scene/figure.ts";
import { figuresOf } from "../scene/scene.ts";
import { boardScene } from "./board-svg.ts";
import type { View } from "./picture.ts";

const boardOf = (grids: string, rules: string, givens = "{}"): Board =>
  compile(
    puzzleOf(`
puzzle: 1
title: Test
setter: { name: Nobody, permission: own }
grids:
${grids}
givens: { cells: ${givens} }
rules: ${rules}
`),
  );

const one = "  - { id: g, size: 4 }";
const plain = boardOf(one, "[]");

type Parts = Partial<Omit<Step, "because">> & { readonly because?: Partial<Step["because"]> };
const step = ({ because, ...rest }: Parts): Step => ({
  n: 1,
  technique: "test",
  level: 1,
  places: {},
  removes: {},
  spots: [],
  relates: [],
  say: "",
  seconds: 1,
  ...rest,
  because: { facts: {}, spots: [], relations: [], houses: [], rules: [], recalls: [], limits: [], ...because },
});

const figures = (board: Board, view: View = {}, layer?: LayerName): Figure[] =>
  figuresOf(boardScene(board, view).scene).filter((figure) => layer === undefined || figure.layer === layer);

/** By the even-odd rule, as the paths are filled. */
const contains = ({ paths }: Paths, [x, y]: readonly [number, number]): boolean =>
  paths
    .flatMap(({ points }) => points.map((from, k) => [from, points[(k + 1) % points.length]!] as const))
    .filter(([[x1, y1], [x2, y2]]) => y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)).length %
    2 ===
  1;

/** The cells whose middle a layer's areas cover. */
const covered = (board: Board, view: View, layer: LayerName): string[] => {
  const areas = figures(board, view, layer).filter(
    (figure): figure is Paths => figure.shape === "paths" && figure.fill !== undefined,
  );
  return board.canvas.names.filter((_, cell) => {
    const { row, column } = board.canvas.places[cell]!;
    return areas.some((area) => contains(area, [column - 0.5, row - 0.5]));
  });
};

const texts = (board: Board, view: View, layer?: LayerName): string[] =>
  figures(board, view, layer).flatMap((figure) => (figure.shape === "text" ? [figure.text] : []));

describe("sheets", () => {
  test("where grids overlap the next sheet lies, and no further", () => {
    const two = boardOf("  - { id: a, size: 4 }\n  - { id: b, size: 4, at: r3c3 }", "[]");
    const darker = figures(two, {}, "sheet").filter(({ fill }) => fill === "sheet-2");
    expect(darker).toMatchObject([
      {
        paths: [
          {
            points: [
              [2, 2],
              [4, 2],
              [4, 4],
              [2, 4],
            ],
          },
        ],
      },
    ]);
  });

  test("the edge of a grid inside another is doubled, elsewhere it is heavy", () => {
    const two = boardOf("  - { id: a, size: 4 }\n  - { id: b, size: 4, at: r3c3 }", "[]");
    const widths = figures(two, {}, "outline").map(({ pen }) => pen!.width);
    expect(widths.filter((width) => width === 0.024)).toHaveLength(2);
    expect(widths.filter((width) => width === 0.07)).toHaveLength(2);
    expect(figures(plain, {}, "outline").map(({ pen }) => pen!.width)).toEqual([0.07]);
  });

  test("a border under another sheet is dashed, but not under the lens", () => {
    const two = boardOf("  - { id: a, size: 4 }\n  - { id: b, size: 4, at: r2c2 }", "[]");
    const dashed = (lens?: string) =>
      figures(two, lens ? { lens } : {}, "region").filter(({ pen }) => pen?.dash).length;
    expect(dashed()).toBe(1);
    expect(dashed("a")).toBe(0);
  });
});

describe("a step", () => {
  const view: View = {
    step: step({
      places: { r1c1: 4 },
      because: { facts: { r1c3: [1, 2] }, limits: ["r2c2"], houses: ["g/row/1", "g/region/a"] },
    }),
  };

  test("hatches the cells that it leans on", () => {
    expect(covered(plain, view, "hatch")).toEqual(["r1c3", "r2c2"]);
  });

  test("gives a cell hatch or band, never both, and the digit that follows neither", () => {
    expect(covered(plain, view, "band").sort()).toEqual(["r1c2", "r1c4", "r2c1"]);
    expect(covered(plain, view, "wash")).toEqual(["r1c1"]);
  });

  test("keeps the frame of the picture, so that nothing jumps from step to step", () => {
    expect(boardScene(plain, view).extent).toEqual(boardScene(plain).extent);
  });

  test("writes the digit that follows once, whether or not it stands already", () => {
    const standing = { ...view, written: { settled: { r1c1: 4, r4c4: 3 } } };
    expect(texts(plain, standing, "conclusion")).toEqual(["4"]);
    expect(texts(plain, standing, "digit")).toEqual(["3"]);
  });

  test("strikes a mark that stands, and shows one that does not before it strikes it", () => {
    const strikes = (marks: Record<string, number[]>) => {
      const drawn = figures(plain, { written: { marks }, step: step({ removes: { r2c2: [2] } }) }, "digit");
      const digits = drawn.flatMap((figure) => (figure.shape === "text" ? [[figure.text, figure.fill]] : []));
      return { digits, slashes: drawn.filter(({ pen }) => pen?.paint === "gone-text").length };
    };
    expect(strikes({ r2c2: [1, 2] })).toEqual({
      digits: [
        ["1", "pencil"],
        ["2", "gone-text"],
      ],
      slashes: 1,
    });
    expect(strikes({})).toEqual({ digits: [["2", "gone-text"]], slashes: 1 });
  });

  test("frames a cell that loses more than can be struck in it, unless what remains is written", () => {
    const narrowed = step({ removes: { r2c2: [1, 2, 3, 4] } });
    const inks = (view: View) => figures(plain, view).flatMap(({ pen }) => (pen?.paint === "so" ? [pen.width] : []));
    expect(inks({ step: narrowed })).toEqual([0.04]);
    const written: View = { step: narrowed, writes: { cells: { r2c2: [5, 6] } } };
    expect(inks(written)).toEqual([0.03]);
    expect(texts(plain, written, "digit")).toEqual(["5", "6"]);
  });

  test("letters its reasons, each in the badge of its sort", () => {
    const board = boardOf(one, "[{ xv-v: r2c2 r2c3 }]");
    const lettered: View = {
      step: step({ because: { rules: ["xv-v/1"], limits: ["r1c1"], houses: ["g/row/4"] } }),
      letters: [
        { letter: "a", of: { cells: ["r1c1"] } },
        { letter: "b", of: { rule: "xv-v/1" } },
        { letter: "c", of: { house: "g/row/4" } },
      ],
    };
    const badges = figures(board, lettered, "letter").flatMap(({ of, pen }) => (pen ? [[of, pen.paint]] : []));
    expect(badges).toEqual([
      ["a", "because"],
      ["b", "rule-use"],
      ["c", "because"],
    ]);
    expect(figures(board, lettered, "ring").every(({ of }) => of === "b")).toBe(true);
  });
});

describe("what stands on the board", () => {
  test("a given has a foot, a settled digit has none", () => {
    const board = boardOf(one, "[]", "{ r1c1: 3 }");
    const drawn = figures(board, { written: { settled: { r2c2: 3 } } }, "digit");
    expect(drawn.filter(({ shape }) => shape === "text").map((figure) => "weight" in figure && figure.weight)).toEqual([
      800, 480,
    ]);
    expect(drawn.filter(({ shape }) => shape === "paths")).toHaveLength(1);
  });

  test("a whole solution leaves the givens as they are", () => {
    const board = boardOf(one, "[]", "{ r1c1: 3 }");
    expect(figures(board, { written: { settled: { r1c1: 3 } } }, "digit")).toEqual(figures(board, {}, "digit"));
  });

  test("a settled digit clears a dark line under it with the colour of its sheet", () => {
    const board = boardOf(
      "  - { id: a, size: 4 }\n  - { id: b, size: 4, at: r3c3 }",
      "[{ palindrome: r2c2 r3c3 r4c4 r5c5 }]",
    );
    const halos = figures(board, { written: { settled: { r2c2: 1, r3c3: 2, r1c4: 3 } } }, "digit").map((figure) =>
      figure.shape === "text" ? figure.halo?.paint : undefined,
    );
    expect(halos).toEqual(["sheet", "sheet-2", undefined]);
  });

  test.each([
    [6, 3, 9],
    [13, 3, 9],
    [230, 20, 25],
  ])("spot marks stand to the right of a corner sum of %i", (sum, length, size) => {
    const cells = Array.from({ length }, (_, k) => `r1c${k + 1}`).join(" ");
    const board = boardOf(
      `  - { id: g, size: ${size}, regions: none }`,
      `[{ cage: { cells: ${cells}, sum: ${sum} } }]`,
    );
    const spots = [6, 7].map((digit) => ({ digit, house: "g/row/1", cells: ["r1c1", "r1c2"] }));
    const text = figures(board, {}, "cage").find(({ shape }) => shape === "text")!;
    const boxes = figures(board, { written: { spots } }, "digit").filter(({ shape }) => shape === "box");
    expect(Math.min(...boxes.map((box) => extentOf(box).left))).toBeGreaterThan(extentOf(text).right);
  });

  test("a spot mark lies as its house lies", () => {
    const spots = [
      { digit: 1, house: "g/row/1", cells: ["r1c1"] },
      { digit: 2, house: "g/column/2", cells: ["r2c2"] },
      { digit: 3, house: "g/region/d", cells: ["r4c4"] },
    ];
    const boxes = figures(plain, { written: { spots } }, "digit").flatMap((figure) =>
      figure.shape === "box" ? [Math.sign(Math.round((figure.width - figure.height) * 100))] : [],
    );
    expect(boxes).toEqual([1, -1, 0]);
  });
});

describe("sentences under the board", () => {
  test("a setter's own rule is said beside its number, in full; a whole-grid rule by its first sentence", () => {
    const board = boardOf(
      one,
      '[{ own-rule: { says: "Ends agree. Middles differ.", cells: r1c1 r1c2 } }, anti-knight]',
    );
    const said = texts(board, {}, "sentence").join(" ");
    expect(said).toMatch(/^1 Ends agree\. Middles differ\. .*knight.*\.$/);
    expect(texts(board, { sentences: false }, "sentence")).toEqual([]);
  });

  test("they widen the picture downwards", () => {
    const board = boardOf(one, "[anti-knight]");
    expect(boardScene(board).extent.bottom).toBeGreaterThan(boardScene(plain).extent.bottom);
  });
});

test("clues outside the grid widen the picture", () => {
  const board = boardOf(one, "[{ skyscraper: { row: 2, from: left, sees: 3 } }]");
  const { extent } = boardScene(board);
  expect(extent.left).toBeLessThan(-0.45);
  expect(extent.right).toBe(boardScene(plain).extent.right);
});
