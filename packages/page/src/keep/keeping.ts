import type { App } from "../app/app.ts";
import { type Moment, withPosition } from "../app/commit.ts";
import type { State } from "../app/state.ts";
import type { Clock } from "../clock.ts";
import type { Position } from "../solve/position.ts";
import { fitting } from "./fitting.ts";
import { progressOf, withProgress } from "./progress.ts";
import { openStore, type Store } from "./store.ts";

const soon = 250;

const isProgress = (state: State, before: State): boolean =>
  state.position !== before.position || state.asked !== before.asked || state.finished !== before.finished;

/** Takes up what was kept, and keeps every change a moment later; says where nothing can be kept. */
export const keepProgress = async (app: App, clock: Clock): Promise<void> => {
  const { fingerprint, formerly, puzzle } = app.ground.data;
  const store = await openStore();
  let savedAt = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const takeUp = async (): Promise<void> => {
    const kept = await store.load(fingerprint).catch(() => undefined);
    if (!kept || kept.savedAt <= savedAt) return;
    savedAt = kept.savedAt;
    clock.set(kept.spent);
    app.update((state) => withProgress(state, kept));
  };
  /** A puzzle that was corrected begins with what was kept of it before. */
  const takeOver = async (): Promise<void> => {
    if (!formerly || (await store.load(fingerprint).catch(() => undefined))) return;
    const kept = await store.load(formerly).catch(() => undefined);
    if (!kept) return;
    clock.set(kept.spent);
    app.update((state, moment) => corrected(state, kept.position, moment));
  };
  const save = async (): Promise<void> => {
    clearTimeout(timer);
    timer = undefined;
    savedAt = Date.now();
    const isKept = await store.save(
      fingerprint,
      progressOf(app.state(), puzzle.title, Math.round(clock.now()), savedAt),
    );
    const kept = isKept ? "here" : "full";
    app.update((state) => (state.kept === kept ? state : { ...state, kept }));
  };
  await begin(app, store, async () => {
    await takeUp();
    await takeOver();
  });
  if (!store.works) return;
  app.watch((state, before) => {
    if (state.settings !== before.settings) void store.saveSettings(state.settings);
    if (isProgress(state, before)) timer ??= setTimeout(() => void save(), soon);
  });
  document.addEventListener("visibilitychange", () => {
    // Another window may have gone on with the same puzzle meanwhile.
    if (document.hidden && timer) void save();
    else if (!document.hidden) void takeUp();
  });
};

const correction =
  "This puzzle has been corrected. What you had entered is here, as far as it still has a place; undo takes it away.";

const corrected = (state: State, before: Position, moment: Moment): State => {
  const next = withPosition(state, fitting(moment.ground, before), "open", correction, moment);
  return { ...next, remark: correction };
};

const begin = async (app: App, store: Store, takeUp: () => Promise<void>): Promise<void> => {
  const settings = await store.settings().catch(() => undefined);
  if (settings) app.update((state) => ({ ...state, settings: { ...state.settings, ...settings } }));
  if (app.state().log.length === 0) await takeUp();
  app.update((state) => ({ ...state, kept: store.works ? "here" : "nowhere" }));
};
