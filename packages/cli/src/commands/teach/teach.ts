import { type Command, json } from "../../command.ts";

export const teach: Command = {
  name: "teach",
  usage: "TECHNIQUE-or-KIND",
  summary: "A small puzzle whose solve takes just this technique or kind of rule, and otherwise only singles",
  flags: [
    { name: "--seed <n>", text: "a whole number; another one gives another puzzle (1)" },
    { name: "--to <file>", text: "writes the puzzle file there" },
    json,
  ],
  example: "solvewright teach naked-pair --seed 3 --to pair.puzzle.yaml",
  load: () => import("./run.ts"),
};
