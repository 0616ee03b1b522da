import { type Board, cellNamed, type PlanBeat, type SpotFact, type Step } from "@solvewright/engine";
import type { Written } from "../board/written.ts";
import type { Show } from "./show.ts";

/** What stands on the board at some moment of the show: digits placed and marks written. */
export type Standing = Required<Written>;

type Digits = Readonly<Record<string, number>>;
type Marks = Readonly<Record<string, readonly number[]>>;

/** The digits that cannot be in a cell any more: removed by a step, or settled in a cell that it sees. */
const goneFrom = (board: Board, name: string, settled: Digits, steps: readonly Step[]): ReadonlySet<number> => {
  const seen = board.sees[cellNamed(board.canvas, name)!]!.flatMap(
    (other) => settled[board.canvas.names[other]!] ?? [],
  );
  return new Set([...seen, ...steps.flatMap(({ removes }) => removes[name] ?? [])]);
};

const marksLeft = (board: Board, marks: Marks, settled: Digits, steps: readonly Step[]): Marks =>
  Object.fromEntries(
    Object.entries(marks).flatMap(([name, digits]) => {
      if (name in settled) return [];
      const gone = goneFrom(board, name, settled, steps);
      const left = digits.filter((digit) => !gone.has(digit));
      return left.length > 0 ? [[name, left] as const] : [];
    }),
  );

const namesOf = (board: Board, id: string): readonly string[] => {
  const cells = board.house(id)?.cells ?? board.rule(id)?.cells ?? [];
  return cells.map((cell) => board.canvas.names[cell]!);
};

/** Spot marks whose digit has found its place are done; those cells that took another digit drop out of the rest. */
const spotsLeft = (board: Board, spots: readonly SpotFact[], settled: Digits): SpotFact[] =>
  spots
    .filter(({ digit, house }) => !namesOf(board, house).some((name) => settled[name] === digit))
    .map((spot) => ({ ...spot, cells: spot.cells.filter((name) => !(name in settled)) }))
    .filter(({ cells }) => cells.length > 0);

const isSame = (a: SpotFact, b: SpotFact): boolean => a.digit === b.digit && a.house === b.house;

/** What stands once a beat is over. */
const afterBeat = (board: Board, before: Standing, steps: readonly Step[], { writes }: PlanBeat): Standing => {
  const settled = Object.assign({}, before.settled, ...steps.map(({ places }) => places)) as Digits;
  const spots = [...before.spots.filter((old) => !writes.spots.some((fresh) => isSame(old, fresh))), ...writes.spots];
  return {
    settled,
    marks: marksLeft(board, { ...before.marks, ...writes.cells }, settled, steps),
    spots: spotsLeft(board, spots, settled),
  };
};

/** A beat with its steps, and what stands on the board before it and after it. */
export interface StagedBeat {
  readonly beat: PlanBeat;
  /** The index of its act. */
  readonly act: number;
  readonly steps: readonly Step[];
  readonly before: Standing;
  readonly after: Standing;
}

/** All beats of the solve in running order. */
export const stagedBeats = ({ board, plan }: Pick<Show, "board" | "plan">): StagedBeat[] => {
  const stepsByNumber = new Map(plan.steps.map((step) => [step.n, step]));
  let before: Standing = { settled: {}, marks: {}, spots: [] };
  return plan.acts.flatMap(({ beats }, act) =>
    beats.map((beat) => {
      const steps = beat.steps.map((n) => stepsByNumber.get(n)!);
      const after = afterBeat(board, before, steps, beat);
      const staged = { beat, act, steps, before, after };
      before = after;
      return staged;
    }),
  );
};
