import { createHash } from "node:crypto";
import { readdir } from "node:fs/promises";
import { join, relative, sep } from "node:path";
import { counted } from "@solvewright/engine";
import type { Asked, Run } from "../../command.ts";
import { badUsage } from "../../faults.ts";
import { printable } from "../../printable.ts";
import { bytesOf } from "../../puzzle-file.ts";
import type { AssessForm } from "../../schemas/assess.ts";
import type { Paper } from "./assess-one.ts";
import type { Crew } from "./crew.ts";
import { keptIn, unkept } from "./kept.ts";
import { assessAll } from "./lanes.ts";
import { linesOf, withDuplicates } from "./table.ts";
import { threadCrew } from "./thread-crew.ts";
import { wantedIn } from "./wanted.ts";

/** The puzzle files below a folder by their paths there, in one order on every machine. */
const filesIn = async (folder: string): Promise<string[]> => {
  const right = "a folder of puzzle files that can be read";
  try {
    const entries = await readdir(folder, { recursive: true, withFileTypes: true });
    return entries
      .filter((entry) => entry.isFile() && /\.ya?ml$/.test(entry.name))
      .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join("/"))
      .sort((a, b) => (a < b ? -1 : 1));
  } catch {
    throw badUsage(`${printable(folder)} is no ${right.slice(2)}.`, { read: folder, right });
  }
};

const verdicts: Readonly<Record<AssessForm["verdict"], string>> = {
  one: "exactly one solution",
  several: "several solutions",
  none: "no solution",
  faulty: "faulty",
};

/** One puzzle in a line for people. */
const lineOf = ({ file, verdict, level, minutes, sameAs }: AssessForm): string =>
  [
    `${file}: ${verdicts[verdict]}`,
    ...(level === undefined ? [] : [`level ${level}`]),
    ...(minutes === undefined ? [] : [`${minutes} min`]),
    ...(sameAs ? [`the same as ${sameAs.join(", ")}`] : []),
  ].join(", ");

const summary = (forms: readonly AssessForm[], all: number): string => {
  const one = forms.filter(({ verdict }) => verdict === "one").length;
  const twice = forms.filter(({ sameAs }) => sameAs).length;
  const head = forms.length < all ? `Stopped after ${forms.length} of ${all} puzzles` : `${all} puzzles`;
  const same = twice > 0 ? ` ${twice} of them are the same as another.` : "";
  return `${head}: ${counted(one)} with exactly one solution.${same}`;
};

const assessFolder = async (folder: string, { out, flags, stopped }: Asked, crewOf: () => Promise<Crew>) => {
  const files = await filesIn(folder);
  const kept = typeof flags.to === "string" ? await keptIn(flags.to) : unkept;
  const found = new Map<string, AssessForm>();
  const note = async (form: AssessForm, isNew: boolean): Promise<void> => {
    found.set(form.file, form);
    if (isNew) await kept.note(form);
    out.progress("Assessing puzzles", `${found.size} of ${files.length}`);
  };
  const paperOf = async (file: string): Promise<Paper | undefined> => {
    const bytes = await bytesOf(join(folder, file));
    const sha256 = createHash("sha256").update(bytes).digest("hex");
    const known = kept.known(file, sha256);
    if (!known) return { file, sha256, bytes };
    await note(known, false);
    return undefined;
  };
  await assessAll(files, await crewOf(), stopped, paperOf, (form) => note(form, true));
  const forms = withDuplicates(files.flatMap((file) => found.get(file) ?? []));
  const isWhole = forms.length === files.length;
  await kept.close(forms, isWhole);
  if (flags.json) out.line(linesOf(forms).trimEnd());
  else for (const form of forms) out.line(printable(lineOf(form)));
  out.note(summary(forms, files.length));
  if (!isWhole) return 3;
  return forms.every(({ verdict }) => verdict === "one") ? 0 : 1;
};

const buildOf = ({ threads }: Asked): string => threads?.build() ?? "alone";

export const run: Run = async (asked) => {
  const wanted = wantedIn(asked);
  if (wanted.role === "alone") return assessFolder(wanted.folder, asked, async () => threadCrew(asked, wanted.cores));
  if (wanted.role === "worker") {
    const { serve } = await import("./queue/serve.ts");
    return serve(wanted.queue, buildOf(asked), threadCrew(asked, wanted.cores), asked);
  }
  const { queueCrew } = await import("./queue/queue-crew.ts");
  return assessFolder(wanted.folder, asked, () => queueCrew(wanted.queue, buildOf(asked), asked));
};
