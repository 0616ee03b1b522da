import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

/** Nine digits in a block of three need four grids of at most 4x4: the block lies where their corners meet. */
const four = (
  rules: readonly string[],
  givens = "{}",
  [a, b, c, d] = ["2 5 7 9", "1 6", "3 4", "8"] as readonly string[],
): string =>
  tiny(
    rules,
    [
      { id: "a", digits: a! },
      { id: "b", size: 2, at: "r3c5", digits: b! },
      { id: "c", size: 2, at: "r5c3", digits: c! },
      { id: "d", size: d!.split(" ").length, at: "r5c5", digits: d! },
    ],
    givens,
  );

export const cases: KindCases = {
  boards: [
    four(["magic-square: { at: r3c3, size: 3 }"]),
    four(["magic-square: { at: r3c3, size: 3 }"], "{ r3c4: 7 }"),
    four(["magic-square: { at: r3c3, size: 3 }"], "{ r3c3: 5 }"),
    four(["magic-square: { at: r3c3, size: 3 }"], "{}", ["2 6 9 11", "3 5", "1 7", "10"]),
    four(["magic-square: { at: r3c3, size: 3 }"], "{}", ["2 5 7 9", "1 6", "3 4", "8 10"]),
  ],
  random: () => undefined,
  board: (random) => ({
    grid: `size: 9${random.below(2) === 0 ? "" : ", regions: none"}`,
    rules: [`magic-square: { at: r${1 + random.below(7)}c${1 + random.below(7)}, size: 3 }`],
  }),
  example: {
    puzzle: tiny(["magic-square: { at: r1c1, size: 3 }"], { size: 9, regions: "boxes" }),
    obeys: "276951438\n951438276\n438276951\n762519384\n519384762\n384762519\n627195843\n195843627\n843627195",
    breaks: "176952438\n952438176\n438176952\n761529384\n529384761\n384761529\n617295843\n295843617\n843617295",
  },
};
