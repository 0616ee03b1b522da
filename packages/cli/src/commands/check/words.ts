import {
  type Assumption,
  assumptionLine,
  type Board,
  type Cell,
  type Clash,
  capital,
  counted,
  type Extent,
  fileForm,
  fileLine,
  listed,
  type Mend,
  mendParts,
  nounsFor,
  type Soundness,
  type Worths,
  wordingLines,
} from "@solvewright/engine";
import { printable } from "../../printable.ts";
import type { Finding } from "./finding.ts";

/** A thing of the file by its id, and what it is. */
type Item = readonly [id: string, what: string];

const ruleItem =
  (board: Board) =>
  (id: string): Item => [id, nounsFor(board, "placed").rule(id)];

const givenItem =
  ({ canvas, givens }: Board) =>
  (cell: Cell): Item => [canvas.names[cell]!, `the given ${givens.get(cell)}`];

const houseItem =
  (board: Board) =>
  (id: string): Item => [id, nounsFor(board, "placed").house(id)];

const listing = (items: readonly Item[]): string[] => {
  const width = Math.max(...items.map(([id]) => id.length));
  return items.map(([id, what]) => printable(`  ${id.padEnd(width)}  ${what}`));
};

const redundant = <K>(worths: ReadonlyMap<K, string>): K[] =>
  [...worths].filter(([, worth]) => worth === "redundant").map(([key]) => key);

const whatIsNeeded = (board: Board, { rules, givens }: Worths): string[] => {
  const spare = [...redundant(rules).map(ruleItem(board)), ...redundant(givens).map(givenItem(board))];
  const all = rules.size + givens.size;
  const both = [...(rules.size > 0 ? ["rule"] : []), ...(givens.size > 0 ? ["given"] : [])];
  if (all === 0) return [];
  if (spare.length === 0) return [`Every ${both.join(" and every ")} is needed.`];
  const nouns = listed(both.map((noun) => `${noun}s`));
  const head = `${capital(counted(spare.length))} of its ${counted(all)} ${nouns} could ${spare.length === 1 ? "go" : "each go by itself"} and leave exactly one solution:`;
  return [head, ...listing(spare)];
};

const mostListed = 12;

const whereTheyDiffer = ({ canvas }: Board, { solutions: [one, other], differ }: Soundness): string[] => {
  const count = differ.length;
  const shown = differ.slice(0, mostListed);
  return [
    `More than one. These two agree everywhere but in ${cellsSaid(count)}.`,
    ...listing(shown.map((cell) => [canvas.names[cell]!, `${one![cell]} or ${other![cell]}`])),
    ...(count > shown.length ? [`  and ${counted(count - shown.length)} more`] : []),
  ];
};

const cellsSaid = (count: number): string => `${counted(count)} ${count === 1 ? "cell" : "cells"}`;

const howMany = ({ count, exact, open }: Extent): string =>
  `It has ${exact ? `${counted(count)} solutions in all` : `at least ${count} solutions`}, and ${cellsSaid(open.length)} ${open.length === 1 ? "is" : "are"} not the same in each.`;

/** What one could do and what comes of it, on one line each. */
const mendItem =
  (board: Board) =>
  (mend: Mend): Item => {
    const names =
      mend.change === "add"
        ? fileForm(board, mend).map(fileLine)
        : [...[...mend.givens.keys()].map((cell) => board.canvas.names[cell]!), ...mend.rules.map(({ id }) => id)];
    return [names.join(" + "), listed(mendParts(board, mend))];
  };

const mendHead = ({ change, verdict }: Mend, count: number): string => {
  const these = count === 1 ? "this" : "any one of these";
  const solutions = verdict === "one" ? "exactly one" : "more than one";
  return change === "add"
    ? `With ${these} added there would be ${solutions}:`
    : `Without ${these} there would be ${solutions}:`;
};

const mendsSaid = (board: Board, mends: readonly Mend[]): string[] =>
  (["one", "several"] as const).flatMap((verdict) => {
    const some = mends.filter((mend) => mend.verdict === verdict);
    return some.length === 0 ? [] : [mendHead(some[0]!, some.length), ...listing(some.map(mendItem(board)))];
  });

/** Those that make a difference. */
const assumptionsSaid = (assumptions: readonly Assumption[]): string[] =>
  assumptions.filter(({ outcome }) => outcome !== "no difference").map(assumptionLine);

const whatClashes = (board: Board, { houses, rules, givens, minimal }: Clash): string[] => [
  "None. These can't all hold:",
  ...listing([...rules.map(ruleItem(board)), ...houses.map(houseItem(board)), ...givens.map(givenItem(board))]),
  minimal
    ? "Without any one of them the others can."
    : "Fewer of them may clash already; that would take too long to find out.",
];

const verdictSaid = (board: Board, soundness: Soundness): string[] => {
  if (soundness.verdict === "one") return ["One. Exactly one solution."];
  return soundness.verdict === "several" ? whereTheyDiffer(board, soundness) : ["None. It has no solution."];
};

const leftOutSaid = (board: Board): string[] => {
  const items = board.rules.filter(({ leftOut }) => leftOut).map(({ id }) => ruleItem(board)(id));
  return items.length === 0 ? [] : ["This leaves out what the file only describes:", ...listing(items)];
};

/** A finding in plain words, the verdict first. */
export const inWords = (board: Board, finding: Finding): string[] => {
  const { soundness, worths, assumptions, clash, extent, mends, wording, isStopped } = finding;
  if (!soundness) return ["Stopped. No verdict yet."];
  return [
    ...(clash ? whatClashes(board, clash) : verdictSaid(board, soundness)),
    ...(extent ? [howMany(extent)] : []),
    ...(mends ? mendsSaid(board, mends) : []),
    ...(worths ? whatIsNeeded(board, worths) : []),
    ...(assumptions ? assumptionsSaid(assumptions) : []),
    ...(wording ? wordingLines(board, wording) : []),
    ...leftOutSaid(board),
    ...(isStopped ? ["Stopped before all of the reasons were known."] : []),
  ];
};
