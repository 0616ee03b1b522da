import type { FaultInText } from "../rules/body.ts";
import type { Setting } from "../rules/contract.ts";
import { faulty, type Kind } from "../rules/contract.ts";
import { feasibilityIn } from "../rules/feasible.ts";
import { nearest } from "../rules/nearest.ts";
import { kindNamed } from "../rules/registry.ts";
import { resolved } from "../rules/setting.ts";
import { shown } from "../rules/shown.ts";
import type { Canvas, Place } from "./canvas.ts";
import type { RuleEntry } from "./puzzle.ts";
import { shownTree } from "./texts.ts";
import { isNothing, type Keys, plainOf, type Spot, type Tell, type Tree, treeAt } from "./tree.ts";

/** A rule instance that was read, and the part of the file that it was read from. */
export interface ReadRule {
  readonly entry: RuleEntry;
  readonly kind: Kind;
  readonly tree: Tree;
}

interface Named {
  readonly name: string;
  readonly spot: Spot;
  /** What stands behind the kind's name. */
  readonly body: Tree;
}

const nothing = ({ from, path }: Spot): Tree => ({
  shape: "scalar",
  from,
  path,
  value: null,
  text: "",
  spotAt: () => ({ from, path }),
});

const form = "a kind of rule, or one kind with its body, such as thermometer: r1c1-r1c3";

const namedIn = (tree: Tree, tell: Tell): Named[] => {
  if (tree.shape === "scalar" && !isNothing(tree)) return [{ name: tree.text, spot: tree, body: nothing(tree) }];
  if (tree.shape !== "keys" || tree.entries.length === 0) return tell(tree, shownTree(tree), form) ?? [];
  const [{ key, keySpot, value }, second] = tree.entries as [
    Keys["entries"][number],
    Keys["entries"][number] | undefined,
  ];
  if (second)
    tell(
      second.keySpot,
      `${shown(second.key)} beside ${shown(key)}`,
      "one kind an entry; what belongs to it goes into its { }",
    );
  return [{ name: key, spot: keySpot, body: value }];
};

/** The place in the file that a fault of a body means. */
const spotOf = (body: Tree, fault: FaultInText): Spot => {
  const tree = treeAt(body, fault.at ?? []);
  if (fault.offset !== undefined && tree.shape === "scalar") return tree.spotAt(fault.offset);
  if (!fault.atKey) return tree;
  const above = treeAt(body, fault.at!.slice(0, -1));
  return (above.shape === "keys" && above.entries.find(({ key }) => key === fault.at!.at(-1))?.keySpot) || tree;
};

const tellUnknown = ({ name, spot }: Named, kinds: readonly Kind[], tell: Tell): undefined => {
  const near = nearest(
    name,
    kinds.map((kind) => kind.name),
  );
  const some = kinds.slice(0, 3).map((kind) => kind.name);
  return tell(
    spot,
    shown(name),
    near ? `a rule kind; the nearest is ${near}` : `a rule kind, such as ${some.join(", ")}`,
  );
};

/** Whole-grid rules that a file may have, and cells of the canvas that they may look at, all in all. */
const mostWholeGrid = 50;
const mostLookedAt = 100_000;
/** Cells that the other rules of a file may name, all in all. */
const mostNamed = 20_000;
/** Cells that these bind, all in all: an index line its whole grid. */
const mostBound = 200_000;

const tellTooMany = (
  named: readonly Named[],
  canvas: Canvas | undefined,
  kinds: readonly Kind[],
  tell: Tell,
): boolean => {
  const whole = named.filter(({ name }) => kindNamed(name, kinds)?.wholeGrid);
  const most = Math.min(mostWholeGrid, Math.floor(mostLookedAt / (canvas?.places.length || 1)));
  const one = whole[most];
  const onThis = most < mostWholeGrid ? `${most} at most on a canvas of ${canvas!.places.length} cells, ` : "";
  const right = `${onThis}${mostWholeGrid} at most${onThis && " on any"}`;
  if (one) tell(one.spot, `${whole.length} rules of whole grids`, right);
  return one !== undefined;
};

const isPlace = (value: object): value is Place => "row" in value && "column" in value;

/** How many places are named in a body. */
const placesIn = (value: unknown): number => {
  if (typeof value !== "object" || value === null) return 0;
  if (isPlace(value)) return 1;
  return Object.values(value).reduce<number>((sum, part) => sum + placesIn(part), 0);
};

/** The rules up to the first with which they name too many cells. */
const tellFar = (rules: ReadRule[], tell: Tell): ReadRule[] => {
  let named = 0;
  const beyond = rules.findIndex(({ entry }) => {
    named += placesIn(entry.body);
    return named > mostNamed;
  });
  if (beyond < 0) return rules;
  tell(rules[beyond]!.tree, `more than ${mostNamed} cells in rules`, `rules that name fewer, all in all`);
  return rules.slice(0, beyond);
};

const instancesOf = (
  { name, body }: Named,
  kind: Kind,
  canvas: Canvas,
  counts: Map<string, number>,
  tell: Tell,
): ReadRule[] =>
  kind.body.read(plainOf(body), canvas).flatMap((read): ReadRule[] => {
    const k = (counts.get(name) ?? 0) + 1;
    counts.set(name, k);
    const tree = treeAt(body, read.at);
    for (const fault of read.faults) tell(spotOf(tree, fault), fault.read, fault.right);
    if (!read.body || read.faults.length > 0) return [];
    return [{ entry: { id: `${name}/${k}`, kind: name, body: read.body }, kind, tree }];
  });

/**
 * The instances of every rule of the file, counted by kind; without a canvas, only the kinds' names are looked at. Of
 * kinds that are not known, the first `most` are told.
 */
export const readRules = (
  tree: Tree | undefined,
  canvas: Canvas | undefined,
  kinds: readonly Kind[],
  most: number,
  tell: Tell,
): ReadRule[] => {
  if (!tree || isNothing(tree)) return [];
  if (tree.shape !== "list") return tell(tree, shownTree(tree), `a list, each entry ${form}`) ?? [];
  const named = tree.items.flatMap((item) => namedIn(item, tell));
  const counts = new Map<string, number>();
  let unknown = 0;
  const isTooMuch = tellTooMany(named, canvas, kinds, tell);
  const rules = named.flatMap((rule) => {
    const kind = kindNamed(rule.name, kinds);
    if (!kind) return (unknown++ < most ? tellUnknown(rule, kinds, tell) : undefined) ?? [];
    return canvas && !isTooMuch ? instancesOf(rule, kind, canvas, counts, tell) : [];
  });
  return tellFar(rules, tell);
};

const generic = "a rule that some digits of its cells can meet";

/**
 * Tells what each rule's kind finds wrong with it, and rules that no digits of their cells can meet: no more than `most`
 * of all, the first in the file.
 */
export const tellUnmeetable = (rules: readonly ReadRule[], setting: Setting, most: number, tell: Tell): void => {
  const isFeasible = feasibilityIn(setting);
  let [told, bound] = [0, 0];
  for (const { entry, kind, tree } of [...rules].sort((a, b) => a.tree.from - b.tree.from)) {
    if (told >= most) return;
    const instance = resolved(entry, kind, setting);
    const isFaulty = "faults" in instance;
    bound += isFaulty ? 0 : instance.cells.length;
    if (bound > mostBound) {
      tell(tree, `rules that bind more than ${mostBound} cells`, "fewer such rules");
      return;
    }
    const cannot = !isFaulty && !kind.wholeGrid && !isFeasible(kind.scopes(instance));
    const { faults } = isFaulty ? instance : faulty(...(cannot ? [{ read: shownTree(tree), right: generic }] : []));
    for (const fault of faults) tell(spotOf(tree, fault), fault.read, fault.right);
    told += faults.length;
  }
};

/** Tells what is read all the same but deserves a second look. */
export const tellRemarks = (rules: readonly ReadRule[], setting: Setting, tell: Tell): void => {
  for (const { entry, kind, tree } of rules)
    for (const fault of kind.body.remarks?.(entry.body, setting) ?? [])
      tell(spotOf(tree, fault), fault.read, fault.right);
};
