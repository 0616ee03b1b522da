import { type Command, json } from "../../command.ts";

export const why: Command = {
  name: "why",
  usage: "FILE CELL [DIGIT]",
  summary: "Why a cell is what it is, or can't be a digit",
  flags: [json],
  example: "solvewright why examples/paper-mill.puzzle.yaml r5c8 5",
  load: () => import("./run.ts"),
};
