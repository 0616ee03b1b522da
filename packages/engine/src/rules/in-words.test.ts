import { expect, test } from "vitest";
import { digitsOf } from "../board/digits.ts";
import { digitsText, domainsText } from "./in-words.ts";

test("digits are written as in files, a run of three or more shortened", () => {
  expect(digitsText(digitsOf([0, 1, 2, 3]))).toBe("0-3");
  expect(digitsText(digitsOf([1, 2]))).toBe("1 2");
  expect(digitsText(digitsOf([1, 2, 3, 5]))).toBe("1 2 3 5");
  expect(domainsText([digitsOf([1, 2, 3]), digitsOf([1, 2, 3]), digitsOf([2, 3])])).toBe("1-3 and 2 3");
});
