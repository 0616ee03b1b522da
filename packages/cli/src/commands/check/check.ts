import { type Command, type Flag, json } from "../../command.ts";

const lines: Flag = { name: "--lines", text: "FILE has a plain grid a line, 81 characters; a JSON line comes of each" };

const pictures: Flag = { name: "--pictures <folder>", text: "draws two solutions that differ, or the clash, to there" };

export const check: Command = {
  name: "check",
  usage: "FILE",
  summary: "Has it one solution, several or none; what each rule and given is worth",
  flags: [json, lines, pictures],
  example: "solvewright check examples/paper-mill.puzzle.yaml",
  load: () => import("./run.ts"),
};
