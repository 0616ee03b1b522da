/** Milliseconds of solving: time in which the page was in sight, on top of what was spent before. */
export interface Clock {
  now(): number;
  /** Goes on from there. */
  set(spent: number): void;
}

export const clockOf = (page: Document, time: () => number): Clock => {
  let spent = 0;
  let since = page.hidden ? undefined : time();
  const now = (): number => spent + (since === undefined ? 0 : time() - since);
  const set = (value: number): void => {
    spent = value;
    since = page.hidden ? undefined : time();
  };
  page.addEventListener("visibilitychange", () => {
    spent = since === undefined ? spent : spent + time() - since;
    since = page.hidden ? undefined : time();
  });
  return { now, set };
};
