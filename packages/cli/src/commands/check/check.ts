import { type Command, json } from "../../command.ts";

export const check: Command = {
  name: "check",
  usage: "FILE",
  summary: "Has it one solution, several or none; what each rule and given is worth",
  flags: [json],
  example: "solvewright check examples/paper-mill.puzzle.yaml",
  load: () => import("./run.ts"),
};
