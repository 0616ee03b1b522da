import { type Command, json } from "../../command.ts";

export const reach: Command = {
  name: "reach",
  usage: "FILE",
  summary: "Who gets through a puzzle alone, and where they are likely to pause",
  flags: [
    { name: "--testers <folder>", text: "board files that testers saved; the guess is held to their times" },
    { name: "--picture <file>", text: "draws the likely pauses as SVG" },
    { name: "--dark", text: "draws on a dark ground" },
    json,
  ],
  example: "solvewright reach examples/paper-mill.puzzle.yaml --picture out/pauses.svg",
  load: () => import("./run.ts"),
};
