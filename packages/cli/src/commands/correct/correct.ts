import { type Command, json } from "../../command.ts";

export const correct: Command = {
  name: "correct",
  usage: "FILE",
  summary: "A correction to what was published: an erratum, a page that keeps progress, a text to pin",
  flags: [
    { name: "--was <file>", text: "the puzzle as it was published, FILE being the right one" },
    { name: "--note <text>", text: "what else was wrong: a slip in the video and its time" },
    { name: "--to <folder>", text: "where to; out/NAME-correction if left out" },
    { name: "--force", text: "also write over files that were changed by hand" },
    json,
  ],
  example: 'solvewright correct right.puzzle.yaml --was published.puzzle.yaml --note "At 4:05 I say 3; it is a 5."',
  load: () => import("./run.ts"),
};
