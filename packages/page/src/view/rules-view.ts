import { type Board, canvasOf, listed, type Place, type Point } from "@solvewright/engine";
import { boardScene, boardSvg, type Extent, extentOf, grown, type RuleText, together } from "@solvewright/press";
import type { Ground } from "../solve/ground.ts";
import { curly } from "../words/curly.ts";
import { drawing, el } from "./el.ts";
import { outside } from "./outside.ts";

interface Window {
  readonly row: number;
  readonly column: number;
  readonly down: number;
  readonly across: number;
  /** The plainer the better: side by side, then one above the other or aslant, early on the clue. */
  readonly cost: number;
}

const windowOn = (a: Place, b: Place, index: number): Window => {
  const [row, column] = [Math.min(a.row, b.row), Math.min(a.column, b.column)];
  const [down, across] = [Math.abs(a.row - b.row) + 1, Math.abs(a.column - b.column) + 1];
  return { row, column, down, across, cost: (down - 1) * 100 + (across > 1 ? 0 : 50) + index };
};

/** Where the numbers and letters of a clue stand; its lines may go on outside a window. */
const writtenOn = (subject: Board, id: string): Point[] => {
  const rule = subject.rule(id);
  return (rule?.kind.marks(rule.instance) ?? []).flatMap((shape) => (shape.shape === "text" ? [shape.at] : []));
};

const isIn = ({ row, column, down, across }: Window, [x, y]: Point): boolean =>
  x > column - 1 && x < column - 1 + across && y > row - 1 && y < row - 1 + down;

/** Two neighbouring cells of a clue, or four round a corner, on which it can be seen best: what is written on it above all. */
const windowsOn = (subject: Board, id: string): (Window & { readonly id: string })[] => {
  const written = writtenOn(subject, id);
  const places = (subject.rule(id)?.cells ?? []).map((cell) => subject.canvas.places[cell]!);
  const pairs =
    places.length === 1
      ? [[places[0]!, places[0]!] as const]
      : [...places.slice(1).map((to, k) => [places[k]!, to] as const), [places[0]!, places.at(-1)!] as const];
  return pairs
    .map(([from, to], k) => windowOn(from, to, k))
    .filter(({ down, across }) => down <= 2 && across <= 2)
    .map((window) => ({ ...window, id, cost: window.cost + (written.every((at) => isIn(window, at)) ? 0 : 1000) }));
};

/** The grids with these clues alone. */
const withRules = (subject: Board, ids: readonly string[]): Board => ({
  ...subject,
  puzzle: { ...subject.puzzle, givens: new Map() },
  rules: subject.rules.filter(({ id }) => ids.includes(id)),
});

/** One clue on no grid. */
const clueAlone = (subject: Board, id: string): Board => ({
  ...subject,
  puzzle: { ...subject.puzzle, grids: [], givens: new Map(), canvas: canvasOf([]) },
  rules: subject.rules
    .filter((rule) => rule.id === id)
    .map((rule) => ({ ...rule, instance: { ...rule.instance, cells: [] } })),
});

const asPage = { theme: "variables", sentences: false } as const;

const cluePicture = (
  subject: Board,
  { id, row, column, down, across }: Window & { readonly id: string },
): HTMLElement => {
  const window = { left: column - 1, top: row - 1, right: column - 1 + across, bottom: row - 1 + down };
  const picture = drawing(
    boardSvg(clueAlone(subject, id), { ...asPage, window, id: `of-${id.replace("/", "-")}` }),
    "rule-picture cells-behind",
  );
  picture.dataset.shape = `${across}x${down}`;
  return picture;
};

/** A clue beside the grid, and the two first cells that it speaks of. */
const besideWindow = (subject: Board, id: string): Extent | undefined => {
  const { scene } = boardScene(withRules(subject, [id]), asPage);
  const figures = scene.layers.find(({ name }) => name === "outside")?.figures ?? [];
  const { row = 1, column = 1 } = subject.canvas.places[subject.rule(id)?.cells[0] ?? 0] ?? {};
  const cells = { left: column - 1, top: row - 1, right: column + 1, bottom: row };
  return figures.length === 0 ? undefined : grown(together([cells, ...figures.map(extentOf)])!, 0.06);
};

/** Of a rule with clues, one of them; of the rest the whole board, with what it draws there. */
const pictureOf = (subject: Board, { ids }: RuleText, k: number): HTMLElement => {
  const [first = ""] = ids;
  const window = besideWindow(subject, first);
  if (window)
    return drawing(boardSvg(withRules(subject, [first]), { ...asPage, window, id: `rule-${k}` }), "rule-picture");
  const [best] = ids.flatMap((id) => windowsOn(subject, id)).sort((x, y) => x.cost - y.cost);
  if (best) return cluePicture(subject, best);
  return drawing(boardSvg(withRules(subject, ids), { ...asPage, id: `rule-${k}` }), "rule-picture");
};

const paragraphs = (text: string): HTMLElement[] =>
  text.split(/\n\s*\n/).map((paragraph) => el("p", {}, paragraph.replaceAll(/\s*\n\s*/g, " ")));

const setterNames = ({ data }: Ground): string => listed(data.setters.map(({ name }) => name));

/** "In Maud Ferrier's words". */
const wordingElement = (ground: Ground): HTMLElement | undefined => {
  const { wording, notes, setters } = ground.data;
  if (!wording && !notes) return undefined;
  const whose = setters.length > 0 ? `In the words of ${setterNames(ground)}` : "In the setter’s words";
  return el(
    "div",
    { class: "wording" },
    el("h3", {}, whose),
    ...paragraphs([wording, notes].filter((text) => text !== undefined).join("\n\n")),
  );
};

const ruleElement = (subject: Board, rule: RuleText, k: number): HTMLElement =>
  el(
    "li",
    { class: "rule" },
    pictureOf(subject, rule, k),
    el("p", {}, el("b", {}, `${rule.title}. `), curly(rule.say), ...rule.notes.map((note) => ` ${curly(note)}`)),
  );

const leftToYou = ({ data }: Ground): HTMLElement[] =>
  data.unchecked.length === 0
    ? []
    : [el("p", { class: "aside" }, "A rule in words alone is yours to keep: nothing here checks it.")];

/** All the rules of the puzzle: the setter's wording, then each with its drawing, then what missing marks mean. */
export const rulesElement = (ground: Ground, subject: Board): HTMLElement => {
  const wording = wordingElement(ground);
  return el(
    "section",
    { class: "rules", "aria-labelledby": "rules-title" },
    el("h2", { id: "rules-title", tabindex: -1 }, "Rules"),
    wording,
    wording ? el("h3", {}, "One by one") : undefined,
    el("ul", {}, ...ground.data.rules.map((rule, k) => ruleElement(subject, rule, k))),
    ...ground.data.missing.map((text) => el("p", { class: "aside" }, text)),
    ...leftToYou(ground),
  );
};

/** Who made it, with a link where there is one. */
export const creditElement = ({ data }: Ground): HTMLElement => {
  const names = data.setters.flatMap(({ name, link }, k) => {
    const before = k === 0 ? "" : k === data.setters.length - 1 ? " and " : ", ";
    const address = outside(link);
    return [before, address ? el("a", address, name) : name];
  });
  return el("p", { class: "by" }, ...(names.length > 0 ? ["by ", ...names] : ["setter not named yet"]));
};
