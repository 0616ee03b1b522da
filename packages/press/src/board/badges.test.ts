import { expect, test } from "vitest";
import { extentOf, shared } from "../scene/extent.ts";
import type { Figure } from "../scene/figure.ts";
import { placedBadges } from "./badges.ts";

const frame = { left: 0, top: 0, right: 3, bottom: 3 };
const digit: Figure = { shape: "text", layer: "digit", at: [1.5, 1.7], text: "5", size: 0.62 };
const boxes = (figures: readonly Figure[]) => figures.filter(({ shape, pen }) => shape === "box" && pen).map(extentOf);

test("a badge takes the first place where it covers nothing", () => {
  const [box] = boxes(
    placedBadges(
      [
        {
          letter: "a",
          kind: "cell",
          places: [
            [1.5, 1.5],
            [2, 2],
            [1, 1],
          ],
        },
      ],
      [digit],
      frame,
    ),
  );
  expect((box!.left + box!.right) / 2).toBeCloseTo(2);
});

test("two badges do not lie on each other", () => {
  const places = [
    [1, 1],
    [2, 1],
  ] as const;
  const drawn = placedBadges(
    [
      { letter: "a", kind: "cell", places },
      { letter: "b", kind: "rule", places },
    ],
    [],
    frame,
  );
  const [first, second] = boxes(drawn);
  expect(shared(first!, second!)).toBe(0);
});

test("a badge keeps inside the picture where it can", () => {
  const [box] = boxes(
    placedBadges(
      [
        {
          letter: "a",
          kind: "so",
          places: [
            [3, 3],
            [2, 2],
          ],
        },
      ],
      [],
      frame,
    ),
  );
  expect(box!.right).toBeLessThan(3);
});
