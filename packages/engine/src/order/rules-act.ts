import type { Board } from "../board/board.ts";
import { rulesTitle } from "../speech/english/acts.ts";
import { introductions, type RuleIntroduction } from "../speech/english/rules.ts";
import { led } from "../speech/english/sentence.ts";
import { textOf, wordsIn } from "../speech/line.ts";
import { isAlike } from "./openings.ts";
import { type Pace, speaking, tenths } from "./pace.ts";
import type { PlanFocus, RuleLine, RulesAct } from "./plan.ts";

/** What is drawn while a kind is introduced: all its clues, and the cells of the one that serves as example. */
const focusOf = (board: Board, { ids }: RuleIntroduction): PlanFocus => {
  const named = (cells: readonly number[]): string[] => cells.map((cell) => board.canvas.names[cell]!);
  if (ids.length > 0) {
    const small = ids
      .map((id) => board.rule(id)!)
      .filter(({ wholeGrid }) => !wholeGrid)
      .sort((a, b) => a.cells.length - b.cells.length);
    return { rules: ids, houses: [], cells: named(small[0]?.cells ?? []) };
  }
  const houses = board.puzzle.grids.flatMap((_, grid) =>
    (["row", "column", "region"] as const).flatMap((shape) => {
      const house = board.houses.find((other) => other.grid === grid && other.shape === shape);
      return house ? [house.id] : [];
    }),
  );
  return {
    rules: [],
    houses,
    cells: named([...board.canvas.grids.keys()].filter((cell) => board.canvas.grids[cell]!.length > 1)),
  };
};

/** One that the audience knows from earlier shows is said shorter and quicker. */
const lineFor = ({ say, title, kind }: RuleIntroduction, met: readonly string[]): string =>
  kind !== undefined && met.includes(kind) ? textOf(led(`${title} again: `, [{ text: say, role: "plain" }])) : say;

const unlike = (say: string, title: string, before: string | undefined): string =>
  before !== undefined && isAlike(say, before) ? textOf(led(`${title}: `, [{ text: say, role: "plain" }])) : say;

/** The rules told before the solve, one beat a kind. */
export const rulesAct = (board: Board, pace: Pace, met: readonly string[]): RulesAct => {
  const lines: RuleLine[] = [];
  for (const [k, introduction] of introductions(board).entries()) {
    const { rule, title, kind } = introduction;
    const say = unlike(lineFor(introduction, met), title, lines.at(-1)?.say);
    const isMet = kind !== undefined && met.includes(kind);
    const spoken = speaking(wordsIn(say), pace) + pace.breath;
    const seconds = tenths(isMet ? spoken : Math.max(pace.ruleKind, spoken));
    lines.push({ n: k + 1, rule, title, say, seconds, focus: focusOf(board, introduction) });
  }
  return { title: rulesTitle, seconds: tenths(lines.reduce((sum, { seconds }) => sum + seconds, 0)), lines };
};
