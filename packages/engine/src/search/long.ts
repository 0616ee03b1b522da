/** How far long work has come. */
export interface Progress {
  readonly nodes: number;
  readonly found: number;
}

/** Work that may take long: it yields now and then, and whoever runs it may stop asking. */
export type Long<T> = Generator<Progress, T>;

/** Nodes between two yields: about a hundredth of a second. */
export const stride = 500;

/** Runs it to the end, or until `shouldStop` says so: then undefined. */
export function finished<T>(work: Long<T>): T;
export function finished<T>(work: Long<T>, shouldStop: (progress: Progress) => boolean): T | undefined;
export function finished<T>(work: Long<T>, shouldStop?: (progress: Progress) => boolean): T | undefined {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    if (shouldStop?.(step.value)) return undefined;
  }
}
