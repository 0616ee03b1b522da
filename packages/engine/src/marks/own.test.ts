import { describe, expect, test } from "vitest";
import { ownDrawing } from "./own.ts";
import type { Shape } from "./shape.ts";

const lines = (shapes: readonly Shape[]) => shapes.filter((shape) => shape.shape === "line");

describe("the setter's own rule", () => {
  test("a line wavers to both sides of the straight way and comes back to every cell", () => {
    const [wave] = lines(
      ownDrawing(
        "line",
        [
          [0.5, 0.5],
          [1.5, 0.5],
          [2.5, 0.5],
        ],
        "1",
      ),
    );
    const points = wave?.shape === "line" ? wave.points : [];
    const aside = points.map(([, y]) => y - 0.5);
    expect(Math.max(...aside)).toBeCloseTo(0.07);
    expect(Math.min(...aside)).toBeCloseTo(-0.07);
    for (const x of [0.5, 1.5, 2.5]) expect(points.some((at) => Math.hypot(at[0] - x, at[1] - 0.5) < 1e-9)).toBe(true);
  });

  test("an area's border stays inside its cells", () => {
    const [border] = lines(
      ownDrawing(
        "area",
        [
          [0.5, 0.5],
          [1.5, 0.5],
        ],
        "1",
      ),
    );
    const points = border?.shape === "line" ? border.points : [];
    expect(points.length).toBeGreaterThan(50);
    expect(points.every(([x, y]) => x > 0 && x < 2 && y > 0 && y < 1)).toBe(true);
  });

  test("dots are diamonds, one a cell", () => {
    expect(
      lines(
        ownDrawing(
          "dots",
          [
            [0.5, 0.5],
            [4.5, 2.5],
          ],
          "1",
        ),
      ).filter(({ closed }) => closed),
    ).toHaveLength(2);
  });

  test("its number stands at its first cell and on the sign of its sentence; without cells on the sign alone", () => {
    const numbers = (shapes: readonly Shape[]) =>
      shapes.flatMap((shape) => (shape.shape === "text" ? [[shape.layer, shape.text]] : []));
    expect(numbers(ownDrawing("dots", [[2.5, 0.5]], "3"))).toEqual([
      ["cage", "3"],
      ["sign", "3"],
    ]);
    expect(numbers(ownDrawing("area", [], "3"))).toEqual([["sign", "3"]]);
  });
});
