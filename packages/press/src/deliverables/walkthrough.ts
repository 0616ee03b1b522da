import { creditOf } from "./credit.ts";
import type { Deliverable } from "./show.ts";

/** The whole solve in words that need no picture. */
export const walkthrough: Deliverable = {
  name: "walkthrough.md",
  purpose: "The whole solve in words, for those who do not see the picture.",
  text: ({ board, plan }) => {
    const rules = plan.rules.lines.map(({ say }) => `- ${say}`).join("\n");
    const acts = plan.acts.map(({ title, close, beats }) =>
      [`## ${title}`, ...beats.map(({ placed }) => placed), close].join("\n\n"),
    );
    return `${[
      `# ${board.puzzle.title}: walkthrough`,
      `${creditOf(board.puzzle)}.`,
      "Rows count from the top and columns from the left, in each grid by itself.",
      "## The rules",
      rules,
      ...acts,
    ].join("\n\n")}\n`;
  },
};
