import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { Settings } from "../app/state.ts";
import type { Progress } from "./progress.ts";

interface Schema extends DBSchema {
  /** By fingerprint, so that several puzzles are kept side by side. */
  progress: { key: string; value: Progress };
  settings: { key: "mine"; value: Settings };
}

/** Where progress is kept; where nothing can be, `works` says so and the rest does nothing. */
export interface Store {
  readonly works: boolean;
  load(fingerprint: string): Promise<Progress | undefined>;
  /** False where there was no room. */
  save(fingerprint: string, progress: Progress): Promise<boolean>;
  settings(): Promise<Settings | undefined>;
  saveSettings(settings: Settings): Promise<void>;
}

const none: Store = {
  works: false,
  load: async () => undefined,
  save: async () => false,
  settings: async () => undefined,
  saveSettings: async () => {},
};

const storeIn = (base: IDBPDatabase<Schema>): Store => ({
  works: true,
  load: (fingerprint) => base.get("progress", fingerprint),
  save: (fingerprint, progress) =>
    base.put("progress", progress, fingerprint).then(
      () => true,
      () => false,
    ),
  settings: () => base.get("settings", "mine"),
  saveSettings: async (settings) => {
    await base.put("settings", settings, "mine").catch(() => {});
  },
});

/** The device's own store. A private window or a sandboxed frame may have none. */
export const openStore = async (): Promise<Store> => {
  try {
    const base = await openDB<Schema>("solvewright-try-it", 1, {
      upgrade: (fresh) => {
        fresh.createObjectStore("progress");
        fresh.createObjectStore("settings");
      },
    });
    return storeIn(base);
  } catch {
    return none;
  }
};
