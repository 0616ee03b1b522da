import { type Command, json } from "../../command.ts";
import { wishes } from "../../wishes-file.ts";

export const pack: Command = {
  name: "pack",
  usage: "FILE",
  summary: "Everything that goes out with a show, as files in a folder",
  flags: [
    { name: "--to <folder>", text: "where to; out/NAME if left out" },
    { name: "--force", text: "also write over files that were changed by hand" },
    wishes,
    json,
  ],
  example: "solvewright pack examples/paper-mill.puzzle.yaml --to out/paper-mill",
  load: () => import("./run.ts"),
};
