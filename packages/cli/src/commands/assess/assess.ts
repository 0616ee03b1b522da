import { type Command, json } from "../../command.ts";

export const assess: Command = {
  name: "assess",
  usage: "[FOLDER]",
  summary: "Judges all puzzle files of a folder on all cores: verdict, level, minutes, reach, duplicates",
  flags: [
    {
      name: "--to <folder>",
      text: "writes assessed.jsonl and assessed.csv there; what is there already is not done again",
    },
    { name: "--cores <n>", text: "how many to use; all where left out" },
    {
      name: "--queue <url>",
      text: "has it done by the workers at this Redis, on however many machines: redis:// or rediss://",
    },
    { name: "--worker", text: "takes puzzles from the queue until Ctrl-C; as many machines as you like" },
    json,
  ],
  example: [
    "solvewright assess examples --to out/assessed",
    "solvewright assess --worker --queue redis://big-box:6379",
    "solvewright assess examples --to out/assessed --queue redis://big-box:6379",
  ].join("\n  "),
  load: () => import("./run.ts"),
};
