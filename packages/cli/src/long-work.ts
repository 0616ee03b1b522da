/** Long work was stopped before its end. */
export class Stopped extends Error {}

const breath = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

/** How long work goes on before the process listens for Ctrl-C and shows progress, in milliseconds. */
const turn = 50;

/** Runs a generator to its end, showing its progress; throws `Stopped` once the user asks to stop. */
export const carriedOut = async <P, T>(
  work: Generator<P, T>,
  stopped: () => boolean,
  show: (progress: P) => void,
): Promise<T> => {
  let last = performance.now();
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    if (performance.now() - last < turn) continue;
    show(step.value);
    await breath();
    if (stopped()) throw new Stopped("stopped");
    last = performance.now();
  }
};
