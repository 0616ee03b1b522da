import { type Command, json } from "../../command.ts";
import { wishes } from "../../wishes-file.ts";

export const answer: Command = {
  name: "answer",
  usage: "FILE CELL DIGIT",
  summary: "A reply to paste for a viewer who asks why not: the reason, when it is in the show, a small picture",
  flags: [
    { name: "--board <file>", text: "from the viewer's board file, as the try-it page saves it" },
    { name: "--picture <file>", text: "draws the reason: a PNG where the name ends so, else SVG" },
    { name: "--take <file>", text: "a recorded solve, so that the reply tells when the cell is settled in it" },
    { name: "--edit <file>", text: "what was cut: our own form, OpenTimelineIO or a CMX 3600 list" },
    { name: "--offset <seconds>", text: "when the slate flashes in the recording, where the edit does not say" },
    { name: "--watch <address>", text: "where it can be watched, with {seconds} for the time" },
    wishes,
    json,
  ],
  example: "solvewright answer examples/paper-mill.puzzle.yaml r5c8 5 --picture why-not.png",
  load: () => import("./run.ts"),
};
