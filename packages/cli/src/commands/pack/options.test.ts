import type { Plan } from "@solvewright/engine";
import { expect, test } from "vitest";
import { dateIn, picturesIn } from "./options.ts";

const plan = { acts: [{ beats: [{ n: 5 }, { n: 6 }] }, { beats: [{ n: 7 }, { n: 8 }] }] } as unknown as Plan;

test("a day is said as people say it", () => {
  expect(dateIn({ date: "2026-11-27" })).toBe("Friday 27 November 2026");
  expect(dateIn({})).toBeUndefined();
});
test.each(["27.11.2026", "2026-02-30", "2026-13-01", ""])("%s is no day", (date) =>
  expect(() => dateIn({ date })).toThrow("--date takes a day"),
);
test("beats are named by their numbers", () => {
  expect(picturesIn({ beats: "8 5-6" }, plan).beats).toEqual([5, 6, 8]);
  expect(picturesIn({ beats: "all" }, plan).beats).toEqual([5, 6, 7, 8]);
  expect(picturesIn({}, plan)).toEqual({ beats: [], dark: false });
});
test.each(["4", "5-9", "x", "5-", ""])("%s names no beat of this show", (beats) =>
  expect(() => picturesIn({ beats }, plan)).toThrow(/beat/),
);
