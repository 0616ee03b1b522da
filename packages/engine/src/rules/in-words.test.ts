import { expect, test } from "vitest";
import { digitsOf } from "../board/digits.ts";
import { counted, listed } from "../speech/english/counts.ts";
import { digitsText, domainsText } from "./in-words.ts";

test("counts are said in words up to twelve", () => {
  expect([0, 1, 12, 13].map(counted)).toEqual(["no", "one", "twelve", "13"]);
});

test("lists end in and, or in or", () => {
  expect(listed([2])).toBe("2");
  expect(listed([2, 5])).toBe("2 and 5");
  expect(listed([2, 5, 8], "or")).toBe("2, 5 or 8");
});

test("digits are written as in files, a run of three or more shortened", () => {
  expect(digitsText(digitsOf([0, 1, 2, 3]))).toBe("0-3");
  expect(digitsText(digitsOf([1, 2]))).toBe("1 2");
  expect(digitsText(digitsOf([1, 2, 3, 5]))).toBe("1 2 3 5");
  expect(domainsText([digitsOf([1, 2, 3]), digitsOf([1, 2, 3]), digitsOf([2, 3])])).toBe("1-3 and 2 3");
});
