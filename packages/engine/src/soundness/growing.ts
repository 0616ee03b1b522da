import type { Progress } from "../search/long.ts";

type Known<T> = Progress & { readonly known: readonly T[] };

/** Work that finds one thing after another: when it is stopped, what it had found is known from its last progress. */
export type Growing<T> = Generator<Known<T>, readonly T[]>;

/** Other work, carried out with its progress told beside what is known already; what it knows itself comes after that. */
export function* beside<T, Result>(
  known: readonly T[],
  work: Generator<Progress & Partial<Known<T>>, Result>,
): Generator<Known<T>, Result> {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    yield { ...step.value, known: [...known, ...(step.value.known ?? [])] };
  }
}
