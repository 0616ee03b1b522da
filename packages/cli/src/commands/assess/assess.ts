import { type Command, json } from "../../command.ts";

export const assess: Command = {
  name: "assess",
  usage: "FOLDER",
  summary: "Judges all puzzle files of a folder on all cores: verdict, level, minutes, reach, duplicates",
  flags: [
    {
      name: "--to <folder>",
      text: "writes assessed.jsonl and assessed.csv there; what is there already is not done again",
    },
    { name: "--cores <n>", text: "how many to use; all where left out" },
    json,
  ],
  example: "solvewright assess examples --to out/assessed",
  load: () => import("./run.ts"),
};
