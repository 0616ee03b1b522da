import { capital, type PlanBeat } from "@solvewright/engine";
import { creditOf } from "../credit.ts";
import { puzzleInWords } from "../puzzle-in-words.ts";
import { rulesNumbered } from "../rules-in-full.ts";
import type { Deliverable } from "../show.ts";
import { inMarkdown } from "../texts.ts";

const items = (texts: readonly string[]): string => texts.map((text) => `- ${inMarkdown(text)}`).join("\n");

const beatText = ({ n, placed }: PlanBeat): string => `**${n}.** ${inMarkdown(placed)}`;

/** The puzzle and its whole solve in words that need no picture; beats bear the numbers of the script. */
export const walkthrough: Deliverable = {
  name: "walkthrough.md",
  purpose: "The puzzle and its whole solve in words, for those who do not see the picture.",
  needs: ["credit", "link", "consent"],
  make: ({ board, plan, isChanged }) =>
    `${[
      `# ${inMarkdown(board.puzzle.title)}: the walkthrough`,
      `${inMarkdown(capital(creditOf(board.puzzle, isChanged)))}.`,
      "Rows count from the top and columns from the left, in each grid by itself.",
      "## The puzzle",
      items(puzzleInWords(board)),
      "## The rules",
      ...rulesNumbered({ board, plan }).map(({ n, say }) => `**${n}.** ${inMarkdown(say)}`),
      ...plan.acts.flatMap(({ title, close, beats }) => [
        `## ${inMarkdown(title)}`,
        ...beats.map(beatText),
        inMarkdown(close),
      ]),
    ].join("\n\n")}\n`,
};
