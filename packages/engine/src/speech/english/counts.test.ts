import { expect, test } from "vitest";
import { counted, listed, ordinal } from "./counts.ts";

test("counts are said in words up to twelve", () => {
  expect([0, 1, 12, 13].map(counted)).toEqual(["no", "one", "twelve", "13"]);
});

test("lists end in and, or in or", () => {
  expect(listed([2])).toBe("2");
  expect(listed([2, 5])).toBe("2 and 5");
  expect(listed([2, 5, 8], "or")).toBe("2, 5 or 8");
});

test("places are said in words up to ten, and then with the ending that English has", () => {
  expect([1, 10, 11, 12, 13, 20, 21, 22, 23, 24].map(ordinal)).toEqual([
    ...["first", "tenth", "11th", "12th", "13th", "20th"],
    ...["21st", "22nd", "23rd", "24th"],
  ]);
});
