import type { Because, Claim, Step } from "../src/deduce/step.ts";

type Concluded = Partial<Omit<Claim, "because">>;

/** A claim of which only what matters is said. */
export const claim = (concluded: Concluded, because: Partial<Because> = {}): Claim => ({
  places: {},
  removes: {},
  spots: [],
  relates: [],
  ...concluded,
  because: {
    facts: {},
    spots: [],
    relations: [],
    houses: [],
    rules: [],
    recalls: [],
    limits: [],
    ...because,
  },
});

/** The same as a numbered sub-step of a what-if. */
export const subStep = (n: string, concluded: Concluded, because: Partial<Because> = {}): Step => ({
  ...claim(concluded, because),
  n,
  technique: "test",
  level: 1,
  say: "",
  seconds: 0,
});
