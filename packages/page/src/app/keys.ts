import type { App } from "./app.ts";

type Pressed = Pick<KeyboardEvent, "key" | "ctrlKey" | "metaKey" | "altKey" | "shiftKey">;

/** A key as the actions name it. Shift is told only where the key alone does not show it. */
export const keyOf = ({ key, ctrlKey, metaKey, shiftKey }: Pressed): string => {
  const isMod = ctrlKey || metaKey;
  const name = key.length === 1 ? key.toLowerCase() : key;
  const isShift = shiftKey && (key.length > 1 || isMod);
  return `${isMod ? "Mod+" : ""}${isShift ? "Shift+" : ""}${name}`;
};

/** Runs what a key stands for now; false where it stands for nothing. */
export const pressed = (app: App, event: Pressed): boolean => {
  if (event.altKey) return false;
  const key = keyOf(event);
  const found = app.actions.find(({ keys, when }) => keys.includes(key) && when(app.state(), app.moment()));
  if (found) app.run(found.id);
  return found !== undefined;
};
