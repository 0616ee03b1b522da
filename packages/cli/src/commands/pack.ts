import { basename } from "node:path";
import { deliverables, type Show } from "@solvewright/press";
import { besleyCss } from "@solvewright/press/files";
import { type Asked, type Command, type ExitCode, UsageError } from "../command.ts";
import { namedDigits, plannedOf, soundnessOf } from "../judged.ts";
import { Stopped } from "../long-work.ts";
import { type PackFile, writePack } from "../pack-folder.ts";
import { loadPuzzle } from "../puzzle-file.ts";

/** What a pack still lacks before it can go out, in sentences. */
const lacking = ({ board }: Show): string[] => {
  const { setters } = board.puzzle;
  const unsaid = setters.filter(({ permission }) => permission.show !== "own" && permission.show !== "granted");
  return [
    ...(setters.length === 0 ? ["The setter is not named."] : []),
    ...setters.filter(({ link }) => !link).map(({ name }) => `No link for ${name}.`),
    ...unsaid.map(({ name }) => `No word from ${name} yet that it may be shown.`),
    "The date of the show.",
  ];
};

const readMe = (show: Show, files: readonly PackFile[]): string => {
  const list = files.map(({ name, purpose }) => `- ${name}: ${purpose}`);
  return `${show.board.puzzle.title}\n\nOpen puzzle.svg and script.md first.\n\n${list.join("\n")}\n\nStill wanted:\n${lacking(
    show,
  )
    .map((text) => `- ${text}`)
    .join("\n")}\n`;
};

const showOf = async (asked: Asked): Promise<Show | ExitCode> => {
  const { board } = await loadPuzzle(asked.words[0]!);
  const { verdict, solutions } = await soundnessOf(board, asked);
  if (verdict !== "one") {
    asked.out.line(
      `${verdict === "none" ? "It has no solution" : "It has more than one solution"}, so there is nothing to publish yet. "check" says more.`,
    );
    return 1;
  }
  const { plan } = await plannedOf(board, asked);
  if (!plan.solved) {
    asked.out.line("Reasoning did not reach the end of this puzzle, so there is no script to publish.");
    return 1;
  }
  return { board, plan, solution: namedDigits(board, solutions[0]!) };
};

const packed = (show: Show, asked: Asked): PackFile[] => {
  const assets = { fontCss: besleyCss() };
  const files = deliverables.map(({ name, purpose, text }): PackFile => {
    asked.out.progress(`Making ${name}`);
    return { name, purpose, content: text(show, assets) };
  });
  return [...files, { name: "README.txt", purpose: "This list.", content: readMe(show, files) }];
};

export const run: Command["run"] = async (asked): Promise<ExitCode> => {
  const name = basename(asked.words[0]!).replace(/\.puzzle\.ya?ml$|\.[^.]+$/, "");
  const to = typeof asked.flags.to === "string" ? asked.flags.to : `out/${name}`;
  if (to === "") throw new UsageError("--to takes a folder.");
  try {
    const show = await showOf(asked);
    if (typeof show === "number") return show;
    const { kept } = await writePack(to, packed(show, asked), asked.flags.force === true);
    for (const file of kept) asked.out.line(`${file} was changed by hand and is left as it is; --force overwrites it.`);
    asked.out.line(
      `The pack lies in ${to}. Open puzzle.svg and script.md first; README.txt says what each file is for.`,
    );
    return 0;
  } catch (error) {
    if (!(error instanceof Stopped)) throw error;
    asked.out.line("Stopped. Nothing has been written.");
    return 3;
  }
};
