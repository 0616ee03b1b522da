import type { Draft, RuleEntry } from "../puzzle/puzzle.ts";
import { cellsAt, domainsOf } from "./cells.ts";
import type { Bound, EdgeMark, Faulty, Kind, Named, Setting } from "./contract.ts";
import { kindNamed } from "./registry.ts";

/** What the kinds may look at in this draft. */
export const settingOf = (draft: Draft, kinds: readonly Kind[]): Setting => ({
  canvas: draft.canvas,
  grids: draft.grids,
  domains: domainsOf(draft),
  marked: (mark: EdgeMark) =>
    draft.rules
      .filter((rule) => kindNamed(rule.kind, kinds)?.edgeMark === mark)
      .map(
        (rule) =>
          cellsAt(draft, (rule.body as { cells: readonly { row: number; column: number }[] }).cells) as [
            number,
            number,
          ],
      ),
});

/** The instance of a rule with everything looked up, or why it can't be. */
export const resolved = (entry: RuleEntry, kind: Kind, setting: Setting): (Bound & Named) | Faulty => {
  const instance = kind.resolve(entry.body, setting) as Bound | Faulty;
  return "faults" in instance ? instance : { ...instance, id: entry.id };
};
