import { readFileSync } from "node:fs";
import { compile, type Plan, shiftedBy } from "@solvewright/engine";
import { puzzleOf } from "@solvewright/engine/test-kit";
import { expect, test } from "vitest";
import { cutOut } from "../../../engine/src/edit/edit.ts";
import { planned } from "../../../engine/test-kit/planned.ts";
import { performed } from "../../../engine/test-kit/presenter.ts";
import { randomFrom } from "../../../engine/test-kit/random.ts";
import { captionsVtt, draftVtt } from "../deliverables/captions.ts";
import { chapters } from "../deliverables/chapters.ts";
import { cuesOf } from "../deliverables/cues.ts";
import { cutList } from "../deliverables/cut-list.ts";
import { description } from "../deliverables/description.ts";
import { momentsOf } from "../deliverables/moments.ts";
import type { Show } from "../deliverables/show.ts";
import { saidIn } from "../transcript/said.ts";
import type { Recorded, SpokenWord } from "./recorded.ts";
import { showTimes } from "./show-times.ts";

const example = new URL("../../../../examples/sorrel-puddle.puzzle.yaml", import.meta.url);
const board = compile(puzzleOf(readFileSync(example, "utf8")));
const { plan } = planned(board) as { readonly plan: Plan };
const solution: Record<string, number> = {};
for (const { places } of plan.steps) Object.assign(solution, places);
for (const [cell, digit] of board.puzzle.givens) solution[board.canvas.names[cell]!] = digit;

const seeds = Array.from({ length: 40 }, (_, k) => k + 1);

/** Three cuts in the recording, each after the last. */
const cutsIn = (seed: number, length: number) => {
  const random = randomFrom(seed + 1000);
  return [0.2, 0.45, 0.7].map((share) => {
    const from = Math.round(length * (share + random.below(15) / 100));
    return { from, to: from + 2 + random.below(Math.ceil(length / 12)) };
  });
};

/** When a take's time comes in the cut video, counted by hand: what is cut before it is taken off, a cut's inside goes to its end. */
const byHand = (time: number, ahead: number, cuts: readonly { from: number; to: number }[]): number =>
  cuts.reduce((at, { from, to }) => at - Math.max(0, Math.min(to, time + ahead) - from), time + ahead);

const recordedFrom = (seed: number) => {
  const shown = performed(plan, board, seed);
  const slate = 3 + (seed % 7);
  const ahead = slate - shown.take.slate;
  const cuts = cutsIn(seed, shown.take.ends + ahead);
  const address = "https://example.org/watch?t={seconds}";
  const recorded: Recorded = { take: shown.take, cutting: { edit: cutOut(cuts), slate }, address };
  const show: Show = { board, plan, solution, recorded };
  return { ...shown, show, inVideo: (time: number) => byHand(time, ahead, cuts), cuts, ahead };
};

test("the puzzle is solved to the end", () => expect(plan.solved).toBe(true));

test.each(seeds)("seed %i: moments are when cells got the digit that they kept, in the cut take", (seed) => {
  const { show, settled, inVideo } = recordedFrom(seed);
  const { moments } = showTimes(show);
  expect(moments!.size).toBe(settled.size);
  for (const [cell, at] of settled) expect(moments!.get(cell), cell).toBeCloseTo(inVideo(at), 6);
  const { cells } = momentsOf(show)!;
  for (const [cell, at] of settled) expect(cells[cell]).toBe(Math.floor(inVideo(at) + 1e-9));
});

test.each(seeds)(
  "seed %i: chapters: the first at 0:00, at least three, at least 10 s each, one after another to the end",
  (seed) => {
    const { show, take, inVideo } = recordedFrom(seed);
    const { chapters } = showTimes(show);
    expect(chapters.length).toBeGreaterThanOrEqual(3);
    expect(chapters[0]!.from).toBe(0);
    chapters.forEach(({ from, to }, k) => {
      expect(to - from).toBeGreaterThanOrEqual(10 - 1e-9);
      expect(to).toBe(chapters[k + 1]?.from ?? to);
    });
    expect(chapters.at(-1)!.to).toBeCloseTo(inVideo(take.ends), 6);
  },
);

test.each(seeds)("seed %i: an act starts after the last act's digits and before its own, in the cut take", (seed) => {
  const { show, acts, settled, inVideo } = recordedFrom(seed);
  const found = showTimes(show).acts;
  plan.acts.forEach(({ beats }, k) => {
    const cells = plan.steps
      .filter(({ n }) => beats.some(({ steps }) => steps.includes(n)))
      .flatMap(({ places }) => Object.keys(places));
    const first = Math.min(...cells.map((cell) => settled.get(cell)!));
    const start = found[k + 1]!.from;
    expect(start).toBeLessThanOrEqual(inVideo(first) + 1e-6);
    if (k > 0) expect(start).toBeGreaterThanOrEqual(inVideo(acts[k]!.to) - 1e-6);
  });
});

const seconds = (stamp: string): number => stamp.split(":").reduce((all, part) => all * 60 + Number(part), 0);

test.each(seeds)(
  "seed %i: the files' chapters start between the last act's digits and their own, in the cut take",
  (seed) => {
    const { show, acts, settled, inVideo } = recordedFrom(seed);
    const inVtt = [...(chapters.make(show, { page: "" }) as string).matchAll(/^(\S+) --> \S+\n(.*)$/gm)];
    const inText = [...(description.make(show, { page: "" }) as string).matchAll(/^(\d+(?::\d\d)+) (.*)$/gm)];
    const starts = inVtt.map(([, at, title]) => [title, Math.floor(seconds(at!) + 1e-6)]);
    expect(inText.map(([, at, title]) => [title, seconds(at!)])).toEqual(starts);
    for (const [, at, title] of inVtt) {
      const k = plan.acts.findIndex((act) => act.title === title);
      if (k < 0) continue;
      const cells = plan.steps.filter(({ n }) => plan.acts[k]!.beats.some(({ steps }) => steps.includes(n)));
      const first = Math.min(...cells.flatMap(({ places }) => Object.keys(places)).map((cell) => settled.get(cell)!));
      // When the rules are over, no entry tells.
      if (k > 0) expect(seconds(at!)).toBeGreaterThanOrEqual(inVideo(acts[k]!.to) - 1e-3);
      expect(seconds(at!)).toBeLessThanOrEqual(inVideo(first) + 1e-3);
    }
    expect(inVtt[0]!.slice(1)).toEqual(["00:00:00.000", plan.rules.title]);
  },
);

test.each(seeds)("seed %i: an act that the cuts leave 10 s and more of is a chapter", (seed) => {
  const { show, acts, inVideo } = recordedFrom(seed);
  const titles = showTimes(show).chapters.map(({ title }) => title);
  // From its first word to its last digit: the chapter is at least as long as that.
  plan.acts.forEach(({ title }, k) => {
    const { from, to } = acts[k + 1]!;
    const before = k === 0 ? 0 : inVideo(acts[k]!.from);
    const isLong = inVideo(to) - inVideo(from) >= 25 && inVideo(from) - before >= 25;
    if (isLong) expect(titles).toContain(title);
  });
});

test("cells in a cut are named as they are said", () => {
  const { show } = recordedFrom(3);
  const text = cutList.make(show, { page: "" }) as string;
  expect(text).toMatch(/in the take: row \d, column \d, moved to/);
  expect(text).not.toMatch(/\br\d+c\d+/);
});

/** Numbered words, one every 0.6 s from the slate on. */
const spokenFrom = (from: number, to: number): SpokenWord[] => {
  const words: SpokenWord[] = [];
  for (let at = from; at < to; at += 0.6)
    words.push({ text: `word${words.length}${words.length % 9 === 8 ? "." : ""}`, from: at, to: at + 0.6 });
  return words;
};

test.each(seeds)("seed %i: captions say what was said, when it was said, without what is cut", (seed) => {
  const { show, take, ahead, inVideo, cuts } = recordedFrom(seed);
  const words = spokenFrom(take.slate + ahead, take.ends + ahead);
  const recorded: Recorded = { ...show.recorded, transcript: { words } };
  const inCut = (at: number) => cuts.some(({ from, to }) => from <= at && at < to);
  const kept = words.filter(({ from }) => !inCut(from + 0.3));
  const { lines } = saidIn(recorded);
  expect(
    lines
      .map(({ text }) => text)
      .join(" ")
      .split(" "),
  ).toEqual(kept.map(({ text }) => text));
  for (const { text, from } of cuesOf(lines)) {
    const said = words.find((word) => word.text === text.split(/\s/)[0])!;
    expect(Math.abs(from - inVideo(said.from - ahead)), text).toBeLessThan(1);
  }
  expect(captionsVtt.make({ ...show, recorded }, { page: "" })).not.toContain("Draft");
  expect(draftVtt.make(show, { page: "" })).toMatch(
    /^WEBVTT\n\nNOTE A draft made from the script.*\n\n.*\n\[Draft from the script\]\n/,
  );
});

test("a take as it was planned, in one piece, has the planned chapters", () => {
  const { take } = performed(plan, board, 1);
  const empty = { ...take, slate: 0, ends: plan.seconds, entries: [] };
  const recorded: Recorded = { take: empty, cutting: { edit: shiftedBy(0) } };
  const found = showTimes({ board, plan, solution, recorded }).chapters;
  showTimes({ board, plan, solution }).chapters.forEach(({ title, from }, k) => {
    expect(found[k]!.title).toBe(title);
    expect(found[k]!.from).toBeCloseTo(from, 6);
  });
});

test("what lies in a cut is listed with where it went", () => {
  const { show, settled, inVideo, cuts, ahead } = recordedFrom(3);
  const inCut = [...settled].filter(([, at]) => cuts.some(({ from, to }) => from <= at + ahead && at + ahead < to));
  const listed = showTimes(show).cut.filter(({ what }) => settled.has(what));
  expect(listed.map(({ what }) => what).sort()).toEqual(inCut.map(([cell]) => cell).sort());
  for (const { what, to } of listed) expect(to).toBeCloseTo(inVideo(settled.get(what)!), 6);
});
