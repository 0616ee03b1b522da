import { type Digits, listOf } from "../../board/digits.ts";

/** The sets of these digits that add up to the total. */
export const combinationsTo = (digits: Digits, total: number): readonly Digits[] => {
  let sets: (readonly [set: number, sum: number])[] = [[0, 0]];
  for (const digit of listOf(digits))
    sets = sets.flatMap(([set, sum]) => [
      [set, sum] as const,
      ...(sum + digit <= total ? [[set | (1 << digit), sum + digit] as const] : []),
    ]);
  return sets.filter(([, sum]) => sum === total).map(([set]) => set as Digits);
};
