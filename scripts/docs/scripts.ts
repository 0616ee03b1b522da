import { readdirSync, readFileSync } from "node:fs";
import { compile, type Plan } from "@solvewright/engine";
import { planned } from "../../packages/engine/test-kit/planned.ts";
import { puzzleOf } from "../../packages/engine/test-kit/puzzles.ts";

const folder = new URL("../../examples/", import.meta.url);

const beatsIn = ({ acts }: Plan): string[] =>
  acts.flatMap(({ title, open, close, beats }) => [
    `## ${title}`,
    open,
    ...beats.map(({ n, name, pause, say }) => `**${n}. ${name}.** ${pause ? `*${pause.say}* ` : ""}${say}`),
    close,
  ]);

/** What is said in a show, from the rules to the last digit. */
const scriptOf = (text: string): string => {
  const board = compile(puzzleOf(text));
  const { plan } = planned(board);
  return `${[
    `# ${board.puzzle.title}`,
    ...plan.rules.lines.map(({ n, title, say }) => `**${n}. ${title}.** ${say}`),
    ...beatsIn(plan),
  ].join("\n\n")}\n`;
};

/** The scripts of all examples, by name from the root of the project. */
export const scripts = (): ReadonlyMap<string, string> =>
  new Map(
    readdirSync(folder)
      .filter((name) => name.endsWith(".puzzle.yaml"))
      .map((name) => [
        `docs/scripts/${name.replace(".puzzle.yaml", ".md")}`,
        scriptOf(readFileSync(new URL(name, folder), "utf8")),
      ]),
  );
