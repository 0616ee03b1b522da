import { mkdir } from "node:fs/promises";
import { dirname, join } from "node:path";
import { listed, namedDigits } from "@solvewright/engine";
import { heldBack, type Paper, withoutTurns } from "@solvewright/press";
import { type BookletPuzzle, bookletPdf, paperNamed, paperNames } from "@solvewright/press/files";
import type { Asked, ExitCode, Run } from "../../command.ts";
import { badUsage } from "../../faults.ts";
import { unlessStopped, watching } from "../../long-work.ts";
import { onlySolution, stoppedAt } from "../../one-solution.ts";
import { printable } from "../../printable.ts";
import { boardIn } from "../../puzzle-file.ts";
import { toDisk } from "../../to-disk.ts";
import { writeWhole } from "../../write-whole.ts";

const paperIn = ({ paper = "a4" }: Asked["flags"]): Paper => {
  const found = paperNamed(String(paper).toLowerCase());
  if (!found)
    throw badUsage(`There is no paper ${printable(String(paper))}.`, {
      read: String(paper),
      right: listed(paperNames),
    });
  return found;
};

const puzzlesIn = async (asked: Asked): Promise<readonly BookletPuzzle[] | ExitCode> => {
  const puzzles: BookletPuzzle[] = [];
  for (const file of asked.words) {
    const board = await boardIn(file, asked.out);
    const solution = onlySolution(board, asked);
    if (typeof solution === "number") {
      asked.out.note(printable(`That is ${file}. No booklet has been made.`));
      return solution;
    }
    puzzles.push({ board, solution: namedDigits(board, solution) });
  }
  return puzzles;
};

/** Who has to agree before it may be handed out, each once. */
const heldIn = (puzzles: readonly BookletPuzzle[]): string[] => {
  const file = { name: "booklet", needs: ["credit", "print"] as const };
  const held = puzzles.flatMap(({ board }) => heldBack([file], { board }));
  return [...new Set(held.map(({ because }) => withoutTurns(because)))];
};

export const run: Run = async (asked) => {
  const { out, flags } = asked;
  const paper = paperIn(flags);
  if (flags.to === "") throw badUsage("--to takes a file.", { read: "--to", right: "the name of a file" });
  const to = typeof flags.to === "string" ? flags.to : join("out", "booklet.pdf");
  const puzzles = await puzzlesIn(asked);
  if (typeof puzzles === "number") return puzzles;
  const title = typeof flags.title === "string" && flags.title.trim() !== "" ? flags.title : "Puzzles";
  const pdf = unlessStopped(() => {
    watching(asked)();
    out.progress("Setting the pages");
    return bookletPdf({ title: withoutTurns(title), puzzles, paper });
  });
  if (!pdf) return stoppedAt(asked, "Nothing has been written.");
  await toDisk(dirname(to), async () => {
    await mkdir(dirname(to), { recursive: true });
    await writeWhole(to, pdf);
  });
  const held = heldIn(puzzles);
  if (flags.json) out.json({ file: to, puzzles: puzzles.length, held });
  else
    for (const line of [
      `The booklet lies in ${printable(to)}.`,
      ...held.map((text) => `Not to be handed out yet: ${text}`),
    ])
      out.line(line);
  return 0;
};
