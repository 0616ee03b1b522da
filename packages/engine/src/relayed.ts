/** Runs work inside other work, its progress told on as the outer's. */
export function* relayed<P, Q, T>(work: Generator<P, T>, tell: (progress: P) => Q): Generator<Q, T> {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    yield tell(step.value);
  }
}
