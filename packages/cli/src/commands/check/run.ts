import type { ExitCode, Run } from "../../command.ts";
import { boardIn } from "../../puzzle-file.ts";
import { type Finding, findingOn } from "./finding.ts";
import { machineForm } from "./machine-form.ts";
import { inWords } from "./words.ts";

const exitCode = ({ isStopped, soundness }: Finding): ExitCode =>
  isStopped ? 3 : soundness?.verdict === "one" ? 0 : 1;

export const run: Run = async (asked) => {
  const { out, words, flags } = asked;
  const board = await boardIn(words[0]!, out);
  const finding = findingOn(board, asked);
  if (flags.json) out.json(machineForm(board, finding));
  else {
    const [verdict, ...rest] = inWords(board, finding);
    out.line(out.colours.bold(verdict!));
    for (const line of rest) out.line(line);
  }
  return exitCode(finding);
};
