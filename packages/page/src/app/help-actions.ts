import type { Ask, Reply } from "../help/asks.ts";
import { cellIn } from "../solve/ground.ts";
import { checkSaid, noHelpSaid, stuckSaid, wrongSaid } from "../words/help-words.ts";
import { type Action, action } from "./action.ts";
import type { Moment } from "./commit.ts";
import { type Asked, type Grade, lacking, type State, saying } from "./state.ts";

const canHelp = ({ helper }: State): boolean => helper === "ready" || helper === "starting";

const noted = (state: State, asked: Asked): State => ({ ...state, asked: [...state.asked, asked] });

const withoutHelp = (state: State): State =>
  state.helper === "ready" || state.helper === "starting" ? state : saying(state, noHelpSaid[state.helper]);

const askNudge = (state: State): Ask => {
  const [last] = state.done.slice(-1);
  const eye = (last ?? []).flatMap((piece) => ("settled" in piece ? [piece.settled] : []));
  return { ask: "nudge", position: state.position, eye, told: state.taken };
};

const askedNudge = (state: State, at: number): State => {
  const next: State = { ...lacking(state, "nudge", "why"), panel: "nudge", asking: askNudge(state) };
  return noted(next, { at, asked: "nudge", grade: 1 });
};

/** The text of a grade, as it is announced. */
const gradeSaid = ({ nudge, wrong, grade }: NonNullable<State["nudge"]>): string => {
  const before = wrong > 0 && grade === 1 ? `${wrongSaid(wrong)} ` : "";
  if (!nudge) return `${before}${stuckSaid}`;
  return `${before}${[nudge.where, nudge.use, nudge.line.placed][grade - 1]}`;
};

/** The first grade, or the next of the one that is open. */
const furtherNudge = (state: State, { at }: Moment): State => {
  const { nudge, panel } = state;
  if (!canHelp(state)) return withoutHelp({ ...lacking(state, "nudge"), panel: "nudge" });
  if (!nudge?.nudge || state.asking) return askedNudge(state, at);
  if (panel !== "nudge") return { ...state, panel: "nudge" };
  if (nudge.grade === 3) return askedNudge(withTaken(state), at);
  const grade = (nudge.grade + 1) as Grade;
  const next: State = { ...state, nudge: { ...nudge, grade } };
  return noted(saying(next, gradeSaid(next.nudge!)), { at, asked: "nudge", grade });
};

/** Digits that the told line took out need not be marked to be built on. */
const withTaken = (state: State): State => {
  const taken = { ...state.taken };
  for (const { removes } of state.nudge?.nudge?.line.steps ?? [])
    for (const [cell, digits] of Object.entries(removes))
      taken[cell] = [...new Set([...(taken[cell] ?? []), ...digits])];
  return { ...state, taken };
};

/** "Why can't this be a 3?", of the cell that the keys start from. */
export const askingWhy = (state: State, digit: number, { at }: Moment): State => {
  const { at: cell, position } = state;
  const ask: Ask = { ask: "why", position, cell, digit };
  return noted({ ...state, panel: "why", why: { digit }, asking: ask }, { at, asked: "why", cell, digit });
};

/** The digits that can be asked about: those of every grid that the cell lies in. */
export const askable = ({ at }: State, { ground }: Moment): number[] => {
  const { grids } = cellIn(ground, at);
  return [...new Set(grids.flatMap((grid) => ground.data.puzzle.grids[grid]!.digits))].sort((a, b) => a - b);
};

const checking = (state: State, { at }: Moment): State => {
  if (!canHelp(state)) return withoutHelp({ ...lacking(state, "check"), panel: "check" });
  const next: State = {
    ...lacking(state, "check"),
    panel: "check",
    asking: { ask: "check", position: state.position },
  };
  return noted(next, { at, asked: "check" });
};

export const helpActions: readonly Action[] = [
  action({
    id: "nudge",
    label: "A nudge",
    keys: ["n"],
    run: furtherNudge,
  }),
  action({
    id: "why",
    label: "Ask why",
    keys: ["w"],
    effect: "to-panel",
    run: (state) => {
      const chosen = state.chosen.length > 0 ? state.chosen : [state.at];
      const next: State = { ...lacking(state, "nudge"), panel: "why", why: {}, chosen };
      return canHelp(state) ? next : withoutHelp(next);
    },
  }),
  action({
    id: "check",
    label: "Check my cells",
    keys: ["k"],
    run: (state, moment) => (canShow(state) ? shown(state) : checking(state, moment)),
  }),
  action({
    id: "where",
    label: "Show me where",
    when: ({ check }) => (check?.wrong.length ?? 0) > 0,
    run: (state) => shown(state),
  }),
  action({
    id: "stop",
    label: "Stop",
    when: ({ asking }) => asking !== undefined,
    run: (state) => saying(lacking(state, "asking", "panel"), "Stopped"),
  }),
  action({ id: "rules", label: "Rules", effect: "to-panel", run: (state) => ({ ...state, panel: "rules" }) }),
  action({
    id: "close",
    label: "Back to the board",
    when: ({ panel }) => panel !== undefined,
    effect: "to-board",
    run: (state) => lacking(state, "panel", "nudge", "why", "check", "asking"),
  }),
];

const canShow = ({ check, panel }: State): boolean => panel === "check" && (check?.wrong.length ?? 0) > 0;

const shown = (state: State): State => {
  const check = state.check;
  return check ? { ...state, panel: "check", check: { ...check, where: true } } : state;
};

/** What the helper answered, put where it belongs; an answer to an older board is left aside. */
export const answered = (state: State, reply: Reply, { ground, at }: Moment): State => {
  const next = lacking(state, "asking");
  switch (reply.reply) {
    case "start":
      return { ...state, helper: reply.sound ? "ready" : "unsound" };
    case "order":
      return reply.plan ? { ...state, plan: reply.plan } : state;
    case "warm":
    case "learn":
      return state;
    case "nudge": {
      const { wrong, nudge } = reply;
      const shownNudge = { wrong, grade: 1 as const, ...(nudge ? { nudge } : {}) };
      return saying({ ...next, nudge: shownNudge }, gradeSaid(shownNudge));
    }
    case "why": {
      const { digit } = state.why ?? {};
      const why = { ...(digit === undefined ? {} : { digit }), answer: reply };
      return saying({ ...next, why }, reply.lines.map(({ placed }) => placed).join(" "));
    }
    case "check":
      return withCheck(next, { ...reply, where: false }, ground.data.puzzle.title, at);
  }
};

const withCheck = (
  state: State,
  { wrong, settled, open, where }: NonNullable<State["check"]>,
  title: string,
  at: number,
): State => {
  const check = { wrong, settled, open, where };
  if (wrong.length > 0 || open > 0) return saying({ ...state, panel: "check", check }, checkSaid(check));
  const finished: State = {
    ...lacking(state, "nudge", "why"),
    chosen: [],
    panel: "finish",
    finished: at - state.began,
  };
  return saying(finished, `${title} is finished. Every digit is in its place.`);
};
