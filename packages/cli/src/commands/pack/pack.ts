import { type Command, json } from "../../command.ts";
import { takeFlags } from "../../take-flags.ts";
import { wishes } from "../../wishes-file.ts";

export const pack: Command = {
  name: "pack",
  usage: "FILE",
  summary: "Everything that goes out with a show, as files in a folder",
  flags: [
    { name: "--to <folder>", text: "where to; out/NAME if left out" },
    { name: "--force", text: "also write over files that were changed by hand" },
    { name: "--date <day>", text: "the day of the show, such as 2026-11-27" },
    { name: "--beats <numbers>", text: 'also a picture of each of these beats: "7 9-12", or all' },
    { name: "--dark", text: "also the pictures in the dark look" },
    { name: "--video", text: "also a rehearsal video, where ffmpeg is on the PATH; it takes a while" },
    { name: "--changed", text: "the puzzle is not letter by letter as its setter made it" },
    { name: "--transcript <file>", text: "what was said, for the captions: WebVTT, SRT or plain text" },
    { name: "--only <names>", text: 'only these files: "chapters.vtt captions.vtt"' },
    ...takeFlags,
    wishes,
    json,
  ],
  example: "solvewright pack examples/paper-mill.puzzle.yaml --to out/paper-mill",
  load: () => import("./run.ts"),
};
