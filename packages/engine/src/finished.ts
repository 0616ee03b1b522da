/** Runs work that yields now and then to its end, or until `shouldStop` says so: then undefined. */
export function finished<P, T>(work: Generator<P, T>): T;
export function finished<P, T>(work: Generator<P, T>, shouldStop: (progress: P) => boolean): T | undefined;
export function finished<P, T>(work: Generator<P, T>, shouldStop?: (progress: P) => boolean): T | undefined {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    if (shouldStop?.(step.value)) return undefined;
  }
}
