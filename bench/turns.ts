/** Somebody who is timed; a pass gives back the milliseconds that it took. */
export interface Runner {
  readonly name: string;
  pass(): number | Promise<number>;
}

const leastMs = 20;

/** Repeats quick work until it has taken long enough to be timed, and gives back the milliseconds of one time. */
export const timed = (work: () => void): number => {
  const start = performance.now();
  let times = 0;
  let taken = 0;
  while (taken < leastMs) {
    work();
    times++;
    taken = performance.now() - start;
  }
  return taken / times;
};

export const timedOnce = async (work: () => unknown): Promise<number> => {
  const start = performance.now();
  await work();
  return performance.now() - start;
};

export const quantile = (values: readonly number[], share: number): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const place = (sorted.length - 1) * share;
  const [below, above] = [sorted[Math.floor(place)]!, sorted[Math.ceil(place)]!];
  return below + (above - below) * (place - Math.floor(place));
};
export const median = (values: readonly number[]): number => quantile(values, 0.5);

/** By runner: the milliseconds of each round. One pass of each, in turn, warms up and is not counted. */
export const inTurns = async (runners: readonly Runner[], rounds: number): Promise<Map<string, number[]>> => {
  const taken = new Map(runners.map(({ name }) => [name, [] as number[]]));
  for (let round = 0; round <= rounds; round++)
    for (const { name, pass } of runners) {
      const ms = await pass();
      if (round > 0) taken.get(name)!.push(ms);
    }
  return taken;
};

/** How many times longer the other took, the median of the rounds. */
export const ratio = (ours: readonly number[], theirs: readonly number[]): number =>
  median(ours.map((ms, round) => theirs[round]! / ms));
