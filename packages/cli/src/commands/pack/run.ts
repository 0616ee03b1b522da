import { type Board, fingerprint, listed, namedDigits, type Solution, type WishList } from "@solvewright/engine";
import {
  type Deliverable,
  heldBack,
  lackedBy,
  onChanges,
  oneLine,
  type Recorded,
  readMeOf,
  type Show,
  withoutTurns,
} from "@solvewright/press";
import { packFiles, picturesAsked } from "@solvewright/press/files";
import type { Asked, ExitCode, Run } from "../../command.ts";
import { unlessStopped, watching } from "../../long-work.ts";
import { onlySolution, stoppedAt } from "../../one-solution.ts";
import { printable } from "../../printable.ts";
import { boardIn } from "../../puzzle-file.ts";
import { recordedIn } from "../../recorded-in.ts";
import { planOf } from "../../show.ts";
import { toDisk } from "../../to-disk.ts";
import { wishesIn } from "../../wishes-file.ts";
import { assets } from "./assets.ts";
import { type PackFile, writePack } from "./folder.ts";
import { folderFor } from "./folder-for.ts";
import type { Manifest } from "./manifest.ts";
import { dateIn, onlyIn, picturesIn } from "./options.ts";
import { rehearsal, whyNoVideo } from "./rehearsal/rehearsal.ts";

const written = (content: string | Uint8Array): string | Uint8Array =>
  typeof content === "string" ? withoutTurns(content) : content;

const aboutPack = (show: Show, deliverables: readonly Deliverable[]): Omit<Manifest, "files" | "pack"> => {
  const { puzzle } = show.board;
  return {
    title: withoutTurns(oneLine(puzzle.title)),
    puzzle: fingerprint(puzzle),
    ...(show.date ? { date: show.date } : {}),
    held: heldBack(deliverables, show).map(({ because, files }) => ({ because: withoutTurns(because), files })),
    changes: withoutTurns(onChanges(show)),
  };
};

const readMeName = "README.txt";

/** The files of a pack, or those of these names, in memory. Throws `Stopped`. */
const filesOf = (
  show: Show,
  deliverables: readonly Deliverable[],
  names: readonly string[] | undefined,
  asked: Asked,
): PackFile[] => {
  const watch = watching(asked);
  const given = assets();
  const fileOf = (deliverable: Deliverable): PackFile => {
    const { name, purpose, make } = deliverable;
    watch();
    asked.out.progress("Making the files", name);
    return { name, purpose, lacks: lackedBy(deliverable, show), content: written(make(show, given)) };
  };
  const readMe: Deliverable = {
    name: readMeName,
    purpose: "What each file is for, and what is still wanted.",
    needs: [],
    make: () => readMeOf(deliverables, show),
  };
  return [readMe, ...deliverables].filter(({ name }) => names?.includes(name) ?? true).map(fileOf);
};

/** What only whoever makes the show can tell. */
const told = (flags: Asked["flags"]): Pick<Show, "date" | "isChanged"> => {
  const date = dateIn(flags);
  return { ...(date ? { date } : {}), ...(flags.changed ? { isChanged: true } : {}) };
};

const showOf = (
  board: Board,
  solution: Solution,
  asked: Asked,
  list: WishList,
  recorded: Recorded | undefined,
): Show | ExitCode => {
  const plan = unlessStopped(() => planOf(board, asked, list));
  if (!plan) return stoppedAt(asked, "Nothing has been written.");
  if (plan.solved)
    return {
      board,
      plan,
      solution: namedDigits(board, solution),
      ...told(asked.flags),
      ...(recorded ? { recorded } : {}),
    };
  if (asked.flags.json) asked.out.json({ solved: false, verdict: "one" });
  else asked.out.line("Reasoning does not reach the end of this puzzle, so there is no script to publish.");
  return 1;
};

const ending = (to: string, files: readonly PackFile[], kept: readonly string[]): string[] => [
  ...(kept.length > 0
    ? [`${listed(kept)} ${kept.length === 1 ? "was" : "were"} changed by hand and kept; --force writes over them.`]
    : []),
  `${files.length - kept.length} files lie in ${printable(to)}.`,
  "Open puzzle.png and script.html first; README.txt says what the others are for and what is still wanted.",
];

export const run: Run = async (asked) => {
  const { out, words, flags } = asked;
  const to = folderFor(words, flags.to);
  told(flags); // a day that is none is told before the long work
  const list = await wishesIn(asked);
  const board = await boardIn(words[0]!, out);
  const recorded = await recordedIn(asked, board);
  const solution = onlySolution(board, asked);
  if (typeof solution === "number") return solution;
  const show = showOf(board, solution, asked, list, recorded);
  if (typeof show === "number") return show;
  const all = [...packFiles, ...picturesAsked(picturesIn(flags, show.plan))].filter(
    (file) => file.isFor?.(show) ?? true,
  );
  const names = onlyIn(flags, [readMeName, ...all.map(({ name }) => name)]);
  const made = unlessStopped(() => filesOf(show, all, names, asked));
  if (!made) return stoppedAt(asked, "Nothing has been written.");
  const video = flags.video ? await rehearsal(show, asked) : undefined;
  if (video === "stopped") return stoppedAt(asked, "Nothing has been written.");
  if (video === "missing" || video === "failed") out.note(whyNoVideo[video]);
  const files = typeof video === "object" ? [...made, video] : made;
  const { kept } = await toDisk(to, () =>
    writePack(to, files, aboutPack(show, all), { force: flags.force === true, others: names !== undefined }),
  );
  if (flags.json) out.json({ folder: to, files: files.map(({ name }) => name), kept });
  else for (const line of ending(to, files, kept)) out.line(line);
  return 0;
};
