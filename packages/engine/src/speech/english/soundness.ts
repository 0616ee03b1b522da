import type { Board } from "../../board/board.ts";
import { withEntries } from "../../soundness/altered.ts";
import type { Assumption } from "../../soundness/assumptions.ts";
import type { Mend } from "../../soundness/mend.ts";
import type { Wording } from "../../soundness/wording.ts";
import { aNoun, listed } from "./counts.ts";
import { nounsFor } from "./nouns.ts";

const comesOut = ({ verdict, outcome }: Assumption): string => {
  if (verdict === "several") return "it has more than one solution";
  if (verdict === "none") return "it has no solution";
  return outcome === "no difference" ? "it has the same one solution" : "it has one solution, but not this one";
};

const followsFrom = {
  needed: " It needs our reading.",
  "must be said": " The rules must say which is meant.",
  "no difference": "",
} as const;

/** "If missing dots mean nothing, it has more than one solution. It needs our reading." */
export const assumptionLine = (assumption: Assumption): string =>
  `If ${assumption.reading}, ${comesOut(assumption)}.${followsFrom[assumption.outcome]}`;

/** Its rules in the plural: "white dots"; of one about missing marks what it says: "that all dots are shown". */
const kindSaid = (board: Board, rule: string): string => {
  const { kind, instance } = board.rules.find((each) => each.kind.name === rule)!;
  return kind.missing ? `that ${kind.missing.says}` : kind.words(instance).plural;
};

const isThat = (said: string): boolean => said.startsWith("that ");

/** What the setter's own wording lacks, or has alone; no line where the two agree. */
export const wordingLines = (board: Board, { unsaid, onlySaid }: Wording): string[] => {
  const said = unsaid.map(({ rule }) => kindSaid(board, rule));
  const [rules, things] = [said.filter(isThat), said.filter((each) => !isThat(each))];
  return [
    ...(things.length > 0
      ? [`A plain search for words doesn't find ${listed(things, "or")} in the setter's own wording.`]
      : []),
    ...(rules.length > 0
      ? [`A plain search for words doesn't find in the setter's own wording ${listed(rules, "or")}.`]
      : []),
    ...onlySaid.map(({ says }) => `The setter's own wording seems to say that ${says}. The file has no such rule.`),
  ];
};

/** A rule by its place, or where it binds a whole grid by what it says. */
const ruleSaid = (board: Board, id: string, article: "a" | "the"): string => {
  const { kind, wholeGrid } = board.rule(id)!;
  const nouns = nounsFor(board, "placed");
  const { called, noun, title, at } = nouns.words(id);
  if (kind.missing) return `the rule that ${kind.missing.says}`;
  if (wholeGrid) return `the rule "${title}"`;
  return article === "the" ? nouns.rule(id) : `${aNoun(called ?? noun)} at ${nouns.cells(at)}`;
};

const rulesSaid = (board: Board, { change, rules }: Mend): string[] => {
  const changed = change === "add" ? withEntries(board, rules) : board;
  return rules.map(({ id }) => ruleSaid(changed, id, change === "add" ? "a" : "the"));
};

/** What is added or taken away, each as a noun: "a given 5 in row 1, column 2", "the white dot at row 4, columns 5 and 6". */
export const mendParts = (board: Board, mend: Mend): string[] => {
  const nouns = nounsFor(board, "placed");
  const article = mend.change === "add" ? "a" : "the";
  return [
    ...[...mend.givens].map(([cell, digit]) => `${article} given ${digit} ${nouns.here(cell)}`),
    ...rulesSaid(board, mend),
  ];
};

const solutions = { one: "exactly one solution", several: "more than one solution", none: "no solution" } as const;

/** "With a given 5 in row 1, column 2 it has exactly one solution." */
export const mendLine = (board: Board, mend: Mend): string =>
  `${mend.change === "add" ? "With" : "Without"} ${listed(mendParts(board, mend))} it has ${solutions[mend.verdict]}.`;
