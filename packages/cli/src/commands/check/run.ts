import type { ExitCode, Run } from "../../command.ts";
import { printable } from "../../printable.ts";
import { boardIn } from "../../puzzle-file.ts";
import { type Finding, findingOn } from "./finding.ts";
import { checkLines } from "./lines.ts";
import { machineForm } from "./machine-form.ts";
import { drawTo } from "./pictures.ts";
import { inWords } from "./words.ts";

const exitCode = ({ isStopped, soundness }: Finding): ExitCode =>
  isStopped ? 3 : soundness?.verdict === "one" ? 0 : 1;

export const run: Run = async (asked) => {
  const { out, words, flags } = asked;
  if (flags.lines) return checkLines(words[0]!, asked);
  const board = await boardIn(words[0]!, out);
  const finding = findingOn(board, asked);
  if (flags.json) out.json(machineForm(board, finding));
  else {
    const [verdict, ...rest] = inWords(board, finding);
    out.line(out.colours.bold(verdict!));
    for (const line of rest) out.line(line);
  }
  if (typeof flags.pictures === "string")
    for (const file of await drawTo(flags.pictures, board, finding)) out.note(`Drawn: ${printable(file)}`);
  return exitCode(finding);
};
