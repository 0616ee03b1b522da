import { type Action, action } from "./action.ts";
import type { Settings } from "./state.ts";

const setting = (id: string, label: string, change: (settings: Settings) => Partial<Settings>): Action =>
  action({ id, label, run: (state) => ({ ...state, settings: { ...state.settings, ...change(state.settings) } }) });

export const keepActions: readonly Action[] = [
  action({ id: "print", label: "Print", effect: "print", run: (state) => state }),
  action({ id: "save", label: "Save to a file", effect: "save", run: (state) => state }),
  action({ id: "open", label: "Open a file", effect: "open", run: (state) => state }),
  setting("clears", "A settled digit takes the marks that it strikes with it", ({ clears }) => ({ clears: !clears })),
  setting("timed", "Tell me at the end how long it took", ({ timed }) => ({ timed: !timed })),
  setting("strip", "Keep the digits below the board", ({ strip }) => ({ strip: !strip })),
  setting("theme-device", "as this device has it", () => ({ theme: "device" })),
  setting("theme-light", "light", () => ({ theme: "light" })),
  setting("theme-dark", "dark", () => ({ theme: "dark" })),
];
