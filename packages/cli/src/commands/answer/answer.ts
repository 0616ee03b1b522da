import { type Command, json } from "../../command.ts";
import { takeFlags } from "../../take-flags.ts";
import { wishes } from "../../wishes-file.ts";

export const answer: Command = {
  name: "answer",
  usage: "FILE CELL DIGIT",
  summary: "A reply to paste for a viewer who asks why not: the reason, when it is in the show, a small picture",
  flags: [
    { name: "--board <file>", text: "from the viewer's board file, as the try-it page saves it" },
    { name: "--picture <file>", text: "draws the reason: a PNG where the name ends so, else SVG" },
    ...takeFlags,
    wishes,
    json,
  ],
  example: "solvewright answer examples/paper-mill.puzzle.yaml r5c8 5 --picture why-not.png",
  load: () => import("./run.ts"),
};
