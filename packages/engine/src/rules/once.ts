import { remembered } from "../board/remembered.ts";
import type { Setting } from "./contract.ts";

const known = remembered((_: Setting) => new Map<string, unknown>());

/** What is worked out for this key, the same for all rules of a file that ask for it; a key begins with its kind's name. */
export const onceIn = <Value>(setting: Setting, key: string, make: () => Value): Value => {
  const values = known(setting);
  if (!values.has(key)) values.set(key, make());
  return values.get(key) as Value;
};
