import { appendFile, mkdir, readFile, rm } from "node:fs/promises";
import { join } from "node:path";
import type { AssessForm } from "../../schemas/assess.ts";
import { toDisk } from "../../to-disk.ts";
import { writeWhole } from "../../write-whole.ts";
import { formIn } from "./form-in.ts";
import { csvOf, linesOf, withDuplicates } from "./table.ts";

const textIn = async (path: string): Promise<string> => {
  try {
    return await readFile(path, "utf8");
  } catch {
    return "";
  }
};

/** Where what is found is kept, so that a run that was stopped or killed goes on where it was. */
export interface Kept {
  /** What is known of a file with these bytes. */
  known(file: string, sha256: string): AssessForm | undefined;
  note(form: AssessForm): Promise<void>;
  /** Writes the lines and the table; once all is done the notes go. */
  close(forms: readonly AssessForm[], isWhole: boolean): Promise<void>;
}

/** Keeps nothing. */
export const unkept: Kept = { known: () => undefined, note: async () => {}, close: async () => {} };

export const keptIn = async (folder: string): Promise<Kept> => {
  const [lines, table, notes] = ["assessed.jsonl", "assessed.csv", "assessed.notes"].map((name) => join(folder, name));
  await toDisk(folder, () => mkdir(folder, { recursive: true }));
  const texts = [await textIn(lines!), await textIn(notes!)];
  const known = new Map<string, AssessForm>();
  // A line that was cut off when its writer was killed, or that is not ours, counts for nothing.
  for (const form of texts
    .join("\n")
    .split("\n")
    .flatMap((line) => formIn(line) ?? []))
    known.set(`${form.sha256} ${form.file}`, form);
  // What a killed writer left of a line must not run into the next.
  if (texts[1] !== "" && !texts[1]!.endsWith("\n")) await toDisk(folder, () => appendFile(notes!, "\n"));
  return {
    known: (file, sha256) => known.get(`${sha256} ${file}`),
    note: (form) => toDisk(folder, () => appendFile(notes!, linesOf([form]))),
    close: (forms, isWhole) =>
      toDisk(folder, async () => {
        if (!isWhole) return;
        const all = withDuplicates(forms);
        await writeWhole(lines!, linesOf(all));
        await writeWhole(table!, csvOf(all));
        await rm(notes!, { force: true });
      }),
  };
};
