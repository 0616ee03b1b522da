import { capital } from "@solvewright/engine";
import type { Ground } from "../solve/ground.ts";
import { type Action, action } from "./action.ts";
import type { Moment } from "./commit.ts";
import { lacking, type State, saying } from "./state.ts";

const gridsIn = ({ data }: Ground) => data.puzzle.grids;
const severalGrids = (_: State, { ground }: Moment): boolean => gridsIn(ground).length > 1;

const held = (state: State, lens: number | undefined, ground: Ground): State =>
  lens === undefined
    ? saying({ ...lacking(state, "lens"), waits: false }, "All grids")
    : saying({ ...state, lens, waits: false }, `${capital(gridsIn(ground)[lens]!.called)} alone`);

/** The lens on a grid by its number: 1 is the topmost. */
export const lensing = (state: State, number: number, { ground }: Moment): State => {
  const lens = gridsIn(ground).length - number;
  return gridsIn(ground)[lens] ? held(state, lens, ground) : { ...state, waits: false };
};

/** The next grid alone, the topmost first, and all of them after the last. */
const turned = (state: State, { ground }: Moment): State => {
  const next = (state.lens ?? gridsIn(ground).length) - 1;
  return held(state, next < 0 ? undefined : next, ground);
};

const zooms = [1, 1.5, 2.2, 3];

export const lookActions: readonly Action[] = [
  action({
    id: "lens",
    label: "One grid alone: its number, 1 the topmost",
    keys: ["g"],
    when: severalGrids,
    run: (state, { ground }) => (state.lens === undefined ? { ...state, waits: true } : held(state, undefined, ground)),
  }),
  action({
    id: "one-grid",
    label: (state, { ground }) =>
      state.lens === undefined ? "One grid" : capital(gridsIn(ground)[state.lens]!.called),
    when: severalGrids,
    run: turned,
  }),
  action({
    id: "zoom",
    label: "Zoom",
    run: (state) => ({ ...state, zoom: state.zoom > 1 ? 1 : zooms[2]! }),
  }),
  action({
    id: "zoom-in",
    label: "Larger",
    keys: ["+"],
    run: (state) => ({ ...state, zoom: zooms.find((zoom) => zoom > state.zoom) ?? state.zoom }),
  }),
  action({
    id: "zoom-out",
    label: "Smaller",
    keys: ["-"],
    run: (state) => ({ ...state, zoom: zooms.findLast((zoom) => zoom < state.zoom) ?? state.zoom }),
  }),
];
