import { type Command, json } from "../../command.ts";

export const booklet: Command = {
  name: "booklet",
  usage: "FILE...",
  summary: "Several puzzles to print in one PDF, their solutions at the end",
  flags: [
    { name: "--to <file>", text: "where to; out/booklet.pdf if left out" },
    { name: "--title <text>", text: "what stands on its first page" },
    { name: "--paper <name>", text: "a4, if left out, or letter" },
    json,
  ],
  example: 'solvewright booklet examples/*.puzzle.yaml --title "Four for a train ride" --paper letter',
  load: () => import("./run.ts"),
};
