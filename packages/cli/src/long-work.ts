import type { Growing } from "@solvewright/engine";
import type { Asked } from "./command.ts";

/** The user asked to stop. */
class Stopped extends Error {}

/** How long work goes on before it shows that it does, in milliseconds. */
const unseen = 50;

/**
 * To be called again and again while work goes on: throws `Stopped` once the user asks to stop, and shows what goes on
 * once it takes long.
 */
export const watching = ({ stopped }: Pick<Asked, "stopped">, show: () => void = () => {}): (() => void) => {
  const start = performance.now();
  return () => {
    if (stopped()) throw new Stopped("stopped");
    if (performance.now() - start > unseen) show();
  };
};

/** Runs a generator to its end, watched. */
export const carriedOut = <P, T>(
  work: Generator<P, T>,
  asked: Pick<Asked, "stopped">,
  show: (progress: P) => void = () => {},
): T => {
  let latest: P | undefined;
  const watch = watching(asked, () => latest !== undefined && show(latest));
  for (;;) {
    watch();
    const step = work.next();
    if (step.done) return step.value;
    latest = step.value;
  }
};

/** What the work gives, or undefined where the user stopped it. */
export const unlessStopped = <T>(work: () => T): T | undefined => {
  try {
    return work();
  } catch (error) {
    if (error instanceof Stopped) return undefined;
    throw error;
  }
};

/** What was found, and whether that was all. */
export interface Found<T> {
  readonly found: readonly T[];
  readonly isStopped: boolean;
}

/** Runs work that finds one thing after another, watched; where the user stops it, what it had found is given. */
export const asFarAsKnown = <T>(work: Growing<T>, asked: Asked, show: () => void): Found<T> => {
  let known: readonly T[] = [];
  function* noting(): Growing<T> {
    for (;;) {
      const step = work.next();
      if (step.done) return step.value;
      known = step.value.known;
      yield step.value;
    }
  }
  const found = unlessStopped(() => carriedOut(noting(), asked, show));
  return { found: found ?? known, isStopped: !found };
};
