import type { KindCases } from "../../../test-kit/index.ts";
import { tiny } from "../../../test-kit/tiny.ts";

const obeys = "387216549\n916574328\n542839176\n139728654\n754961832\n628345917\n891452763\n275693481\n463187295";
const breaks = "761293485\n854761329\n932548617\n273954168\n485612973\n196837542\n529476831\n347185296\n618329754";

/** The filling without these digits, as givens by cell. */
const without = (digits: string, filling: string): string => {
  const given = [...filling.replaceAll("\n", "")].flatMap((digit, k) =>
    digits.includes(digit) ? [] : [`r${Math.floor(k / 9) + 1}c${(k % 9) + 1}: ${digit}`],
  );
  return `{ ${given.join(", ")} }`;
};

const nine = { size: 9, regions: "boxes" };

/** A grid of nine is too big for plain enumeration, so most of each board is given. */
export const cases: KindCases = {
  boards: [
    tiny(["windows"], nine, without("456", obeys)),
    tiny(["windows: { grids: [tiny] }"], { size: 9 }, without("19", obeys)),
    tiny(["windows"], nine, without("78", breaks)),
    tiny(
      ["windows"],
      [
        { id: "a", ...nine },
        { id: "b", size: 2, at: "r9c9", digits: "5 6" },
      ],
      without("456", obeys),
    ),
  ],
  random: () => undefined,
  example: { puzzle: tiny(["windows"], nine), obeys, breaks },
};
