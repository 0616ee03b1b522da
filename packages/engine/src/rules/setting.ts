import type { Cell, Place } from "../puzzle/canvas.ts";
import type { Draft, RuleEntry } from "../puzzle/puzzle.ts";
import { cellsAt, domainsOf } from "./cells.ts";
import type { Bound, EdgeMark, Faulty, Kind, Named, Setting } from "./contract.ts";
import { kindNamed } from "./registry.ts";

/** What exact checks may try in all rules of a file. */
const mostTries = 1_000_000;

const spendingOf = (most: number): ((tries: number) => boolean) => {
  let left = most;
  return (tries) => {
    left -= tries;
    return left >= 0;
  };
};

const marksOf = (draft: Draft, kinds: readonly Kind[], mark: EdgeMark): (readonly [Cell, Cell])[] =>
  draft.rules
    .filter((rule) => kindNamed(rule.kind, kinds)?.edgeMark === mark)
    .map((rule) => cellsAt(draft, (rule.body as { cells: readonly Place[] }).cells) as [Cell, Cell]);

/** What the kinds may look at in this draft. Of what was accepted before, nothing is tried again: `trusting`. */
export const settingOf = (draft: Draft, kinds: readonly Kind[], { trusting = false } = {}): Setting => {
  const marks = new Map<EdgeMark, (readonly [Cell, Cell])[]>();
  return {
    canvas: draft.canvas,
    grids: draft.grids,
    domains: domainsOf(draft),
    marked: (mark) => {
      const known = marks.get(mark) ?? marksOf(draft, kinds, mark);
      marks.set(mark, known);
      return known;
    },
    spend: spendingOf(trusting ? 0 : mostTries),
  };
};

/** The instance of a rule with everything looked up, or why it can't be. */
export const resolved = (entry: RuleEntry, kind: Kind, setting: Setting): (Bound & Named) | Faulty => {
  const instance = kind.resolve(entry.body, setting) as Bound | Faulty;
  return "faults" in instance ? instance : { ...instance, id: entry.id };
};
