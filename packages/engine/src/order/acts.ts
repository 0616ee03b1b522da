import type { Board } from "../board/board.ts";
import type { OrderedBeat } from "./running-order.ts";

/** Consecutive beats, first and last index, with what the act is about. */
export interface Act {
  readonly part: "way-in" | "middle" | "first-half" | "second-half" | "finish";
  /** Of the middle of several grids: the one in which the talk stays; undefined where it goes to and fro. */
  readonly grid?: number | undefined;
  /** The talk comes back there. */
  readonly isAgain?: boolean;
  readonly from: number;
  readonly to: number;
}

const levelOf = ({ steps }: OrderedBeat): number => Math.max(...steps.map(({ deduction }) => deduction.level));

/** The grid in which most of a beat's conclusions lie; undefined where they lie in none by itself. */
const gridOf = (board: Board, { steps }: OrderedBeat): number | undefined => {
  const cells = steps.flatMap(({ deduction }) => [...deduction.places.keys(), ...deduction.removes.keys()]);
  const tally = board.puzzle.grids.map(
    (_, grid) => cells.filter((cell) => board.canvas.grids[cell]!.includes(grid)).length,
  );
  const most = Math.max(...tally);
  const top = tally.indexOf(most);
  return tally.filter((count) => count === most).length === 1 ? top : undefined;
};

/** From here on everything is easy. */
const finishFrom = (beats: readonly OrderedBeat[]): number => {
  let from = beats.length;
  while (from > 0 && levelOf(beats[from - 1]!) === 1) from--;
  return from;
};

const fewest = 3;
const mostStretches = 3;

interface Stretch {
  readonly grid: number | undefined;
  readonly from: number;
  readonly to: number;
}

const lengthOf = ({ from, to }: Stretch): number => to - from + 1;

/** Joins the shortest stretch to the longer of its neighbours, and neighbours of one grid with each other. */
const joinShortest = (stretches: readonly Stretch[]): Stretch[] => {
  const shortest = stretches.reduce(
    (best, stretch, k) => (lengthOf(stretch) < lengthOf(stretches[best]!) ? k : best),
    0,
  );
  const [before, after] = [stretches[shortest - 1], stretches[shortest + 1]];
  const goesBack = !after || (before !== undefined && lengthOf(before) >= lengthOf(after));
  const grid = (goesBack ? before : after)!.grid;
  return sameJoined(stretches.map((stretch, k) => (k === shortest ? { ...stretch, grid } : stretch)));
};

const sameJoined = (stretches: readonly Stretch[]): Stretch[] => {
  const joined: Stretch[] = [];
  for (const stretch of stretches) {
    const last = joined.at(-1);
    if (last && last.grid === stretch.grid) joined[joined.length - 1] = { ...last, to: stretch.to };
    else joined.push(stretch);
  }
  return joined;
};

/** The stretches of the middle in which the talk stays in one grid, none too short and not too many. */
const stretches = (board: Board, beats: readonly OrderedBeat[], from: number, to: number): Act[] => {
  const single = Array.from(
    { length: to - from },
    (_, k): Stretch => ({ grid: gridOf(board, beats[from + k]!), from: from + k, to: from + k }),
  );
  let acts = sameJoined(single);
  while (acts.length > 1 && (acts.length > mostStretches || acts.some((act) => lengthOf(act) < fewest)))
    acts = joinShortest(acts);
  return acts.map((act, k) => ({
    part: "middle",
    ...act,
    isAgain: acts.slice(0, k).some(({ grid }) => grid === act.grid),
  }));
};

const middle = (board: Board, beats: readonly OrderedBeat[], from: number, to: number): Act[] => {
  if (to <= from) return [];
  if (board.puzzle.grids.length > 1) return stretches(board, beats, from, to);
  if (to - from < 2 * fewest + 2) return [{ part: "middle", from, to: to - 1 }];
  const half = from + Math.ceil((to - from) / 2);
  return [
    { part: "first-half", from, to: half - 1 },
    { part: "second-half", from: half, to: to - 1 },
  ];
};

/** Cuts the beats into acts: the way in, the middle by grids, and the finish from where everything is easy. */
export const actsOf = (board: Board, beats: readonly OrderedBeat[]): Act[] => {
  if (beats.length === 0) return [];
  const opening = Math.min(beats.length, Math.max(fewest, Math.round(beats.length / 6)));
  const finish = Math.max(opening, Math.min(finishFrom(beats), beats.length - 1));
  const acts: Act[] = [{ part: "way-in", from: 0, to: opening - 1 }, ...middle(board, beats, opening, finish)];
  if (finish < beats.length) acts.push({ part: "finish", from: finish, to: beats.length - 1 });
  return acts;
};
