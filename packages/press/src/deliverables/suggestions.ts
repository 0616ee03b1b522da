import { type Board, capital, counted, listed } from "@solvewright/engine";
import { byWords } from "./credit.ts";
import { plural } from "./plural.ts";
import { ruleNames } from "./rule-names.ts";
import type { Deliverable, Show } from "./show.ts";
import { oneLine } from "./texts.ts";

/** Longest title and longest short text that sites take, in characters (common practice). */
const most = { title: 100, text: 280 };

/** "two grids that share nine cells", "one 9 by 9 grid". */
const gridsSaid = ({ puzzle: { grids }, canvas }: Board): string => {
  const [first] = grids;
  if (grids.length === 1) return `one ${first!.size} by ${first!.size} grid`;
  const shared = canvas.grids.filter((under) => under.length > 1).length;
  return shared === 0
    ? `${counted(grids.length)} grids`
    : `${counted(grids.length)} grids that share ${plural(shared, "cell")}`;
};

const givensSaid = ({ puzzle: { givens } }: Board): string =>
  givens.size === 0 ? "not one digit given" : `${plural(givens.size, "digit")} given`;

const bySetters = ({ board: { puzzle }, isChanged }: Show): string => {
  const { setters } = puzzle;
  return setters.length === 0
    ? ""
    : `${isChanged ? "," : ""} ${byWords(isChanged)} ${listed(setters.map(({ name }) => oneLine(name)))}`;
};

/** A list that is cut to its first few. */
const few = (names: readonly string[], count: number): string =>
  names.length > count ? `${names.slice(0, count).join(", ")} and more` : listed(names);

const titlesFor = (show: Show): string[] => {
  const { board, plan } = show;
  const title = oneLine(board.puzzle.title) || "Untitled";
  const [names, minutes] = [ruleNames(board), Math.max(1, Math.round(plan.seconds / 60))];
  return [
    `${title}${bySetters(show)}`,
    `${capital(gridsSaid(board))}: ${title}`,
    `${capital(givensSaid(board))}: ${title}`,
    ...(names.length > 0 ? [`${capital(few(names, 3))}: ${title}, step by step`] : []),
    `${title} in about ${plural(minutes, "minute")}, and why each digit goes where it goes`,
  ];
};

const textsFor = (show: Show): string[] => {
  const { board, plan } = show;
  const title = oneLine(board.puzzle.title) || "Untitled";
  const names = ruleNames(board);
  const withRules = names.length > 0 ? `, with ${few(names, 4)}` : "";
  const minutes = plural(Math.max(1, Math.round(plan.seconds / 60)), "minute");
  return [
    `${title}${bySetters(show)}: ${gridsSaid(board)}${withRules}. ${capital(givensSaid(board))}. Try it first, then watch.`,
    `${capital(gridsSaid(board))}, ${givensSaid(board)}. We take about ${minutes} for ${title}${bySetters(show)} and say why at every step.`,
    `${title}${bySetters(show)} is out. If you get stuck, the page gives a nudge from where you are, not the answer.`,
  ];
};

const within = (length: number, texts: readonly string[]): string[] =>
  texts.filter((text) => [...text].length <= length);

const numbered = (texts: readonly string[]): string => texts.map((text, k) => `${k + 1}. ${text}`).join("\n");

const listing = (texts: readonly string[], length: number): string => {
  const fitting = within(length, texts);
  return fitting.length > 0 ? numbered(fitting) : `None: the puzzle's title is too long for ${length} characters.`;
};

/** Titles and short texts from what everybody sees at once: grids, rules, givens. Nothing of the way in. */
export const suggestions: Deliverable = {
  name: "suggestions.txt",
  purpose: "Titles and short texts to choose from; none gives anything away.",
  needs: ["credit", "consent"],
  make: (show) =>
    `${["Titles", listing(titlesFor(show), most.title), "Short texts", listing(textsFor(show), most.text)].join(
      "\n\n",
    )}\n`,
};
