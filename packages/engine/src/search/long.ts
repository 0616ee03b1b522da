/** How far long work has come. */
export interface Progress {
  readonly nodes: number;
  readonly found: number;
}

/** Work that may take long: it yields now and then, and whoever runs it may stop asking. */
export type Long<T> = Generator<Progress, T>;

/** Nodes between two yields: about a hundredth of a second. */
export const stride = 500;
