import type { Ground } from "../solve/ground.ts";
import type { Action } from "./action.ts";
import { entryActions } from "./entry-actions.ts";
import { helpActions } from "./help-actions.ts";
import { keepActions } from "./keep-actions.ts";
import { lookActions } from "./look-actions.ts";
import { moveActions } from "./move-actions.ts";

/** Everything that a solver can do: read by keys, strip, links, help and tests. */
export const actionsFor = (ground: Ground): readonly Action[] => [
  ...entryActions(ground),
  ...moveActions,
  ...lookActions,
  ...helpActions,
  ...keepActions,
];
