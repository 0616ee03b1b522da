import type { Command } from "./command.ts";

/** A command as the help lists it; its module is loaded when it is run. */
export interface Listed extends Omit<Command, "run"> {
  load(): Promise<Pick<Command, "run">>;
}

const json = { name: "--json", text: "for machines" };

export const commands: readonly Listed[] = [
  {
    name: "check",
    usage: "FILE",
    summary: "Has it one solution, several or none; what each rule and given is worth",
    flags: [json],
    example: "solvewright check examples/paper-mill.puzzle.yaml",
    load: () => import("./commands/check.ts"),
  },
  {
    name: "plan",
    usage: "FILE",
    summary: "The running order: acts, beats and lines, every step proved",
    flags: [{ name: "--level <n>", text: "the highest level wanted, 1 to 5" }, json],
    example: "solvewright plan examples/paper-mill.puzzle.yaml --level 3",
    load: () => import("./commands/plan.ts"),
  },
  {
    name: "why",
    usage: "FILE CELL [DIGIT]",
    summary: "Why a cell is what it is, or can't be a digit",
    flags: [json],
    example: "solvewright why examples/paper-mill.puzzle.yaml r4c5 3",
    load: () => import("./commands/why.ts"),
  },
  {
    name: "pack",
    usage: "FILE",
    summary: "Everything that goes out with a show, as files in a folder",
    flags: [
      { name: "--to <dir>", text: "the folder; out/NAME where left out" },
      { name: "--force", text: "overwrite files that were changed by hand" },
    ],
    example: "solvewright pack examples/paper-mill.puzzle.yaml --to out/paper-mill",
    load: () => import("./commands/pack.ts"),
  },
];
