import { type Board, type Part, type RuleLine, type Step, textOf, wordsIn } from "@solvewright/engine";
import { type BoardOptions, boardScene, boardSvg } from "../../board/board-svg.ts";
import { coloursOf } from "../../colours.ts";
import { widthOf } from "../../scene/letters.ts";
import { lettersOf } from "../../step/letters.ts";
import { element, escaped } from "../../svg/element.ts";
import { typeOf } from "../../svg/type.ts";
import { cuesOf } from "../cues.ts";
import type { Show } from "../show.ts";
import { type StagedBeat, stagedBeats } from "../standing.ts";
import { oneLine } from "../texts.ts";
import { timesOf } from "../times.ts";

/** A picture that stands for a while; times in seconds from the start of the show. */
export interface Frame {
  readonly from: number;
  readonly to: number;
  /** 1280 by 720, in the static setting. */
  svg(): string;
}

const size = { width: 1280, height: 720 };
/** What stays free at every edge, as on the stage. */
const safe = 36;
const nameHeight = 44;
const captionHeight = 112;
const letters = { name: 22, caption: 32 } as const;

/** What is on the board from some moment on. */
interface State {
  readonly from: number;
  readonly name: string;
  readonly view: BoardOptions;
}

interface Place {
  readonly at: "left" | "middle" | "right";
  readonly y: number;
}

const anchors = {
  left: { x: safe, anchor: undefined },
  middle: { x: size.width / 2, anchor: "middle" },
  right: { x: size.width - safe, anchor: "end" },
} as const;

/** A text on one line, smaller where it would not fit. */
const written = (text: string, { at, y }: Place, letters: number, weight: number): string => {
  const width = widthOf(text, weight) * letters;
  const most = size.width - 2 * safe - (at === "middle" ? 0 : 330);
  const fitted = width > most ? (letters * most) / width : letters;
  return element(
    "text",
    {
      x: String(anchors[at].x),
      y: String(y),
      "text-anchor": anchors[at].anchor,
      "font-size": fitted.toFixed(2),
      fill: coloursOf("light")(at === "middle" ? "ink" : "ink-2"),
      ...typeOf("static", "voice", weight),
    },
    escaped(text),
  );
};

const boardIn = (board: Board, view: BoardOptions): string => {
  const { extent } = boardScene(board, { ...view, sentences: false });
  const [wide, high] = [extent.right - extent.left, extent.bottom - extent.top];
  const room = { width: size.width - 2 * safe, height: size.height - safe / 2 - nameHeight - captionHeight };
  const cell = Math.min(room.width / wide, room.height / high);
  const drawn = boardSvg(board, { ...view, sentences: false, setting: "static", ground: "stage", cell });
  const x = (size.width - wide * cell) / 2;
  return drawn.replace("<svg", `<svg x="${x.toFixed(2)}" y="${nameHeight}"`);
};

const frameSvg = (name: string, board: string, caption: string): string =>
  element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${size.width} ${size.height}`,
      width: String(size.width),
      height: String(size.height),
    },
    [
      element("rect", { width: "100%", height: "100%", fill: coloursOf("light")("stage") }),
      board,
      written(name, { at: "left", y: 30 }, letters.name, 500),
      written("rehearsal, draft captions", { at: "right", y: 30 }, letters.name, 500),
      ...caption
        .split("\n")
        .map((line, k, all) =>
          written(line, { at: "middle", y: size.height - safe - (all.length - 1 - k) * 42 }, letters.caption, 600),
        ),
    ].join("\n"),
  );

const ruleState = ({ n, title, focus }: RuleLine, starts: ReadonlyMap<number, number>): State => ({
  from: starts.get(n)!,
  name: `${n}. ${oneLine(title)}`,
  view: { ringed: focus.rules },
});

/** How much of a line is said before it comes to what follows, from 0 to 1. */
const untilSo = (parts: readonly Part[]): number => {
  const first = parts.findIndex(({ role }) => role === "so");
  return first < 0 ? 0 : wordsIn(textOf(parts.slice(0, first))) / wordsIn(textOf(parts));
};

/** A step without what it concludes. */
const reasonOf = (step: Step): Step => ({ ...step, places: {}, removes: {}, spots: [], relates: [] });

const beatStates = ({ beat, steps, before, after }: StagedBeat, starts: ReadonlyMap<number, number>): State[] => {
  const [from, name] = [starts.get(beat.n)!, `${beat.n}. ${oneLine(beat.name)}`];
  const told = from + (beat.pause?.seconds ?? 0);
  const so = told + untilSo(beat.parts) * (from + beat.seconds - told);
  const reason = { written: before, step: steps.map(reasonOf), letters: lettersOf(beat.parts) };
  return [
    // An invitation to look is no place to show the answer, nor is the reason.
    { from, name, view: { written: before } },
    { from: told, name, view: reason },
    { from: so, name, view: { written: before, step: steps, letters: reason.letters, writes: beat.writes } },
    { from: from + beat.seconds, name: "", view: { written: after } },
  ];
};

const statesOf = (show: Show, starts: ReadonlyMap<number, number>): State[] => [
  ...show.plan.rules.lines.map((line) => ruleState(line, starts)),
  { from: show.plan.rules.seconds, name: "", view: {} },
  ...stagedBeats(show).flatMap((staged) => beatStates(staged, starts)),
];

const last = <T extends { readonly from: number }>(list: readonly T[], at: number): T | undefined =>
  list.findLast(({ from }) => from <= at + 1e-6);

/** The shortest time that a picture stands, in seconds: one frame at 25 a second. */
const shortest = 0.04;

/** The running order at its planned times with its draft captions: one picture for each time that something changes. */
export const rehearsalFrames = (show: Show): Frame[] => {
  const { lines, starts } = timesOf(show.plan);
  const states = statesOf(show, starts);
  const cues = cuesOf(lines);
  const end = Math.max(show.plan.seconds, cues.at(-1)?.to ?? 0);
  const moments = [0, ...states.map(({ from }) => from), ...cues.flatMap(({ from, to }) => [from, to]), end];
  const cuts = [...new Set(moments.map((at) => Math.round(at / shortest) * shortest))].sort((a, b) => a - b);
  const boards = new Map<State, string>();
  const boardOf = (state: State): string => {
    if (!boards.has(state)) boards.set(state, boardIn(show.board, state.view));
    return boards.get(state)!;
  };
  return cuts.slice(0, -1).map((from, k): Frame => {
    const middle = (from + cuts[k + 1]!) / 2;
    const state = last(states, middle) ?? states[0]!;
    const cue = cues.find((cue) => cue.from <= middle && middle < cue.to);
    return { from, to: cuts[k + 1]!, svg: () => frameSvg(state.name, boardOf(state), cue?.text ?? "") };
  });
};
