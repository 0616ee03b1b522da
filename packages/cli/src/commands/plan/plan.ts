import { type Command, json } from "../../command.ts";
import { wishes } from "../../wishes-file.ts";

export const plan: Command = {
  name: "plan",
  usage: "FILE",
  summary: "The running order: acts, beats and lines, every step proved",
  flags: [
    { name: "--level <n>", text: "the highest level of step wanted, 1 to 5" },
    wishes,
    {
      name: "--other-ways <beat>",
      text: "instead: the other proved reasons for what this beat concludes, to wish for",
    },
    json,
  ],
  example: "solvewright plan examples/paper-mill.puzzle.yaml --level 3",
  load: () => import("./run.ts"),
};
