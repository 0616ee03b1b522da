import { listed } from "@solvewright/engine";
import { cleared, marked, type SpotShape, settleable, settled, spotHouse, spotted } from "../solve/entry.ts";
import { cellIn, type Ground } from "../solve/ground.ts";
import { withRedo, withUndo } from "../solve/history.ts";
import { isBlank, nothing, type Position } from "../solve/position.ts";
import { cellsHeard, contentHeard } from "../words/heard.ts";
import { armedSaid, shapeSaid } from "../words/spot-words.ts";
import { type Action, action } from "./action.ts";
import { type Moment, withoutStale, withPosition } from "./commit.ts";
import { lensing } from "./look-actions.ts";
import { lacking, type State, saying } from "./state.ts";

const hasChosen = ({ chosen }: State): boolean => chosen.length > 0;

/** What the chosen cells hold now, to be heard: one by its content, several by their number. */
const nowHeard = (ground: Ground, position: Position, chosen: readonly string[]): string =>
  chosen.length === 1 ? contentHeard(ground, position, chosen[0]!) : cellsHeard(chosen);

/** Why a digit could not be entered. */
const refusal = (ground: Ground, cells: readonly string[], digit: number): string => {
  if (cells.every((cell) => cellIn(ground, cell).given !== undefined)) return "That digit is given.";
  const grid = ground.data.puzzle.grids[cellIn(ground, cells[0]!).grids[0]!]!;
  const { digits } = cellIn(ground, cells[0]!);
  return digits.includes(digit) ? "" : `${grid.called.replace(/^t/, "T")} has no ${digit}.`;
};

/** A digit entered in the chosen cells: as a mark, or as a spot mark where a letter went before it. */
const entering = (state: State, digit: number, moment: Moment): State => {
  const { chosen, place, position, turn, stays } = state;
  const { ground } = moment;
  if (chosen.length === 0) return { ...state, typed: "" };
  const to =
    place === "cell" ? marked(ground, position, chosen, digit) : spotted(ground, position, chosen, digit, place, turn);
  const text = nowHeard(ground, to, chosen);
  const next = withPosition(state, to, place === "cell" ? "mark" : "spot", text, moment);
  const after: State = { ...next, typed: "", place: stays ? place : "cell" };
  if (next !== state) return after;
  const remark = refusal(ground, chosen, digit);
  return saying({ ...after, remark }, remark);
};

const digitAction = (digit: number, isTyped: boolean): Action =>
  action({
    id: `digit-${digit}`,
    label: String(digit),
    keys: isTyped ? [String(digit)] : [],
    when: (state) => hasChosen(state) || state.waits,
    run: (state, moment) => (state.waits ? lensing(state, digit, moment) : entering(state, digit, moment)),
  });

const canGrow = ({ digits }: Ground, typed: string): boolean =>
  digits.some((digit) => String(digit).startsWith(typed) && String(digit) !== typed);

/** One figure of a number that may have two: it is entered once it can't grow, or when Space ends it. */
const typing = (state: State, figure: string, moment: Moment): State => {
  if (state.waits) return lensing(state, Number(figure), moment);
  const typed = state.typed + figure;
  if (canGrow(moment.ground, typed)) return { ...state, typed };
  return entering(state, Number(typed), moment);
};

const figureAction = (figure: string): Action =>
  action({
    id: `figure-${figure}`,
    label: figure,
    keys: [figure],
    when: (state) => hasChosen(state) || state.waits,
    run: (state, moment) => typing(state, figure, moment),
  });

const ended = (state: State, moment: Moment): State =>
  state.typed === "" ? state : entering(state, Number(state.typed), moment);

/** The letter of a place: the next digit says where that can go; again it takes the other grid's. */
const armed = (state: State, shape: SpotShape, stays: boolean, { ground }: Moment): State => {
  const many = Math.max(1, cellIn(ground, state.at).houses.filter((house) => house.shape === shape).length);
  const turn = state.place === shape ? (state.turn + 1) % many : 0;
  const next: State = { ...state, place: shape, turn, stays, remark: "" };
  return saying(next, armedSaid(ground, state.at, shape, turn));
};

const spotAction = (shape: SpotShape, key: string): Action =>
  action({
    id: `spot-${shape}`,
    label: (_, { ground }) => `Where its ${shapeSaid(ground, shape)} can hold a digit`,
    keys: [key],
    when: (state, { ground }) => hasChosen(state) && spotHouse(ground, state.at, shape, 0) !== undefined,
    run: (state, moment) => armed(state, shape, false, moment),
  });

const placeAction = (place: State["place"], label: string): Action =>
  action({
    id: `place-${place}`,
    label: (_, { ground }) => (place === "region" ? shapeSaid(ground, place) : label),
    run: (state, moment) =>
      place === "cell"
        ? { ...state, place, stays: false, remark: "" }
        : armed({ ...state, place: state.stays ? state.place : "cell" }, place, true, moment),
  });

const settle = (state: State, moment: Moment): State => {
  const { chosen, position, settings } = state;
  const able = settleable(moment.ground, position, chosen);
  if (able.length === 0) return saying(state, "No chosen cell holds exactly one mark.");
  const to = settled(moment.ground, position, chosen, settings.clears);
  const digits = [...new Set(able.map((cell) => to.settled[cell]!))];
  const text = able.length === 1 ? `${digits[0]} settled` : `${cellsHeard(able)} settled as ${listed(digits)}`;
  return withPosition(state, to, "settle", text, moment);
};

const stepping = (state: State, step: typeof withUndo, did: string, { ground, at }: Moment): State => {
  const history = step(state);
  if (history === state) return state;
  const change = did === "undo" ? state.done.at(-1)! : state.undone.at(-1)!;
  const cells = [
    ...new Set(change.flatMap((piece) => ("spot" in piece ? piece.to : Object.values(piece).slice(0, 1)))),
  ];
  const [only] = cells as string[];
  const where =
    cells.length === 1 && only ? `: ${cellIn(ground, only).said}, ${contentHeard(ground, history.position, only)}` : "";
  const log = [...state.log, { at, did, change }];
  const next = withoutStale(lacking({ ...state, ...history, log, typed: "", remark: "" }, "finished"));
  return saying(next, `${did === "undo" ? "Undone" : "Done again"}${where}`);
};

const digitActions = ({ digits, isLong }: Ground): Action[] => [
  ...digits.map((digit) => digitAction(digit, !isLong)),
  ...(isLong ? Array.from("0123456789", figureAction) : []),
];

export const entryActions = (ground: Ground): readonly Action[] => [
  ...digitActions(ground),
  action({
    id: "end-number",
    label: "End the number",
    keys: [" "],
    when: ({ typed }) => typed !== "",
    run: ended,
  }),
  action({
    id: "settle",
    label: "Settle",
    keys: ["Enter"],
    when: (state, moment) => settleable(moment.ground, ended(state, moment).position, state.chosen).length > 0,
    run: (state, moment) => settle(ended(state, moment), moment),
  }),
  action({
    id: "clear",
    label: "Take out",
    keys: ["Backspace", "Delete"],
    when: hasChosen,
    run: (state, moment) => {
      const to = cleared(moment.ground, state.position, state.chosen);
      return withPosition({ ...state, typed: "" }, to, "clear", nowHeard(moment.ground, to, state.chosen), moment);
    },
  }),
  spotAction("row", "r"),
  spotAction("column", "c"),
  spotAction("region", "b"),
  placeAction("cell", "cell"),
  placeAction("row", "row"),
  placeAction("column", "column"),
  placeAction("region", "box"),
  action({
    id: "undo",
    label: "Undo",
    keys: ["Mod+z"],
    when: ({ done }) => done.length > 0,
    run: (state, moment) => stepping(state, withUndo, "undo", moment),
  }),
  action({
    id: "redo",
    label: "Redo",
    keys: ["Mod+Shift+z", "Mod+y"],
    when: ({ undone }) => undone.length > 0,
    run: (state, moment) => stepping(state, withRedo, "redo", moment),
  }),
  action({
    id: "begin-again",
    label: "Begin again",
    when: ({ position }) => !isBlank(position),
    run: (state, moment) => {
      const remark = "Everything is taken out. Undo brings it back.";
      const next = withPosition(lacking(state, "panel", "nudge", "why"), nothing, "begin-again", remark, moment);
      return { ...next, taken: {}, began: moment.at, remark };
    },
  }),
];

/** For the strip: the digits that all chosen open cells have as marks now. */
export const standing = ({ chosen, position, place, turn }: State, ground: Ground, digit: number): boolean => {
  const open = chosen.filter(
    (cell) => cellIn(ground, cell).given === undefined && position.settled[cell] === undefined,
  );
  if (open.length === 0) return false;
  if (place === "cell") return open.every((cell) => position.marks[cell]?.includes(digit));
  return open.every((cell) => {
    const house = spotHouse(ground, cell, place, turn);
    return position.spots.some((spot) => spot.digit === digit && spot.house === house?.id && spot.cells.includes(cell));
  });
};
