import { type Board, fingerprint, type Solution, type Soundness } from "@solvewright/engine";
import {
  type Corrected,
  correctedPage,
  correctionsIn,
  type Deliverable,
  erratumText,
  heldBack,
  onChanges,
  oneLine,
  pinnedText,
  withoutTurns,
} from "@solvewright/press";
import type { Asked, ExitCode, Run } from "../../command.ts";
import { badUsage } from "../../faults.ts";
import { unlessStopped } from "../../long-work.ts";
import { onlySolution, stoppedAt } from "../../one-solution.ts";
import { printable } from "../../printable.ts";
import { boardIn } from "../../puzzle-file.ts";
import { soundnessOf } from "../../show.ts";
import { toDisk } from "../../to-disk.ts";
import { assets } from "../pack/assets.ts";
import { type PackFile, writePack } from "../pack/folder.ts";
import { folderFor } from "../pack/folder-for.ts";

type File = Pick<Deliverable, "name" | "purpose" | "needs"> & { readonly content: string };

const filesOf = (corrected: Corrected): File[] => [
  {
    name: "erratum.txt",
    purpose: "What was wrong and what is right, for the description and wherever the puzzle was published.",
    needs: ["consent"],
    content: erratumText(corrected),
  },
  {
    name: "pinned.txt",
    purpose: "The same in short, to pin under the video.",
    needs: ["consent"],
    content: pinnedText(corrected),
  },
  {
    name: "try-it.html",
    purpose: "The page that takes the place of the published one, at the same address, so that it finds what was kept.",
    needs: ["consent", "page"],
    content: correctedPage(corrected, assets()),
  },
];

const differing = (was: Board, before: Solution | undefined, now: Board, after: Solution): number => {
  const digits = new Map(was.canvas.names.map((name, cell) => [name, before?.[cell]]));
  return now.canvas.names.filter((name, cell) => digits.get(name) !== after[cell]).length;
};

const judged = (was: Board, now: Board, asked: Asked): Soundness | undefined =>
  // Boards that are the same puzzle have the same solution, which was found already.
  fingerprint(was.puzzle) === fingerprint(now.puzzle) ? undefined : soundnessOf(was, asked);

const correctedBy = (was: Board, now: Board, solution: Solution, asked: Asked): Corrected => {
  const { note } = asked.flags;
  const before = judged(was, now, asked);
  const only = before?.verdict === "one" ? before.solutions[0] : undefined;
  return {
    was,
    now,
    verdict: before?.verdict ?? "one",
    differ: only ? differing(was, only, now, solution) : 0,
    ...(typeof note === "string" && note.trim() !== "" ? { note } : {}),
  };
};

const nothingToSay = ({ words }: Asked) =>
  badUsage("Nothing differs from what was published, and no --note says what was wrong.", {
    read: words[0]!,
    right: "--was with the file that was published, or --note with what was wrong",
  });

const write = async (corrected: Corrected, asked: Asked): Promise<ExitCode> => {
  const { out, words, flags } = asked;
  const { now } = corrected;
  const to = folderFor(words, flags.to, "-correction");
  const files = filesOf(corrected);
  const written = files.map(
    ({ name, purpose, content }): PackFile => ({
      name,
      purpose,
      lacks: [],
      content: withoutTurns(content),
    }),
  );
  const about = {
    title: withoutTurns(oneLine(now.puzzle.title)),
    puzzle: fingerprint(now.puzzle),
    held: heldBack(files, { board: now }),
    changes: withoutTurns(onChanges({ board: now })),
  };
  const { kept } = await toDisk(to, () => writePack(to, written, about, { force: flags.force === true }));
  const count = correctionsIn(corrected.was, now).length;
  if (flags.json) out.json({ folder: to, files: files.map(({ name }) => name), kept, corrections: count });
  else {
    for (const name of kept) out.line(`${name} was changed by hand and kept; --force writes over it.`);
    out.line(withoutTurns(pinnedText(corrected)).trim());
    out.line(`${files.length - kept.length} files lie in ${printable(to)}. Put try-it.html at the old page's address.`);
  }
  return 0;
};

export const run: Run = async (asked) => {
  const { out, words, flags } = asked;
  const now = await boardIn(words[0]!, out);
  const was = typeof flags.was === "string" ? await boardIn(flags.was, out) : now;
  if (!flags.note && correctionsIn(was, now).length === 0) throw nothingToSay(asked);
  const solution = onlySolution(now, asked);
  if (typeof solution === "number") return solution;
  const corrected = unlessStopped(() => correctedBy(was, now, solution, asked));
  return corrected ? write(corrected, asked) : stoppedAt(asked, "Nothing has been written.");
};
