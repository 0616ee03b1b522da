import { createHash } from "node:crypto";
import { mkdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { writeWhole } from "../../write-whole.ts";
import { type Entry, type Manifest, manifestName, readManifest } from "./manifest.ts";

/** A file as it should lie in a pack. */
export interface PackFile extends Pick<Entry, "name" | "purpose" | "lacks"> {
  readonly content: string | Uint8Array;
}

const hashOf = (content: string | Uint8Array): string => createHash("sha256").update(content).digest("hex");

const bytesIn = async (path: string): Promise<Uint8Array | undefined> => {
  try {
    return await readFile(path);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return undefined;
    throw error;
  }
};

interface Planned extends PackFile {
  readonly entry: Entry;
  /** Changed by hand since it was written. */
  readonly isTheirs: boolean;
}

const plannedIn = async (folder: string, before: Manifest | undefined, file: PackFile): Promise<Planned> => {
  const { content, ...about } = file;
  const there = await bytesIn(join(folder, file.name));
  const [was, sha256] = [there && hashOf(there), hashOf(content)];
  const ours = before?.files.find(({ name }) => name === file.name);
  const isTheirs = was !== undefined && ![sha256, ours?.sha256, ours?.was].includes(was);
  const entry = { ...about, sha256, ...(was === undefined || was === sha256 || isTheirs ? {} : { was }) };
  return { ...file, isTheirs, entry };
};

const textOf = (manifest: Manifest): string => `${JSON.stringify(manifest, null, 2)}\n`;

const withoutWas = ({ was: _, ...entry }: Entry): Entry => entry;

export interface Writing {
  /** Also over files that were changed by hand. */
  readonly force: boolean;
  /** What else lies there still belongs to the pack. */
  readonly others?: boolean;
}

/**
 * Writes a pack's files, each whole; those that were changed by hand are kept unless `force`. While it writes, the
 * manifest lists what each file was as well, so that after a sudden end no file of ours is taken for one of theirs.
 */
export const writePack = async (
  folder: string,
  files: readonly PackFile[],
  about: Omit<Manifest, "files" | "pack">,
  { force, others = false }: Writing,
): Promise<{ readonly kept: readonly string[] }> => {
  await mkdir(folder, { recursive: true });
  const before = readManifest(await bytesIn(join(folder, manifestName)));
  const planned: Planned[] = [];
  for (const file of files) planned.push(await plannedIn(folder, before, file));
  const kept = others ? (before?.files ?? []).filter(({ name }) => !files.some((file) => file.name === name)) : [];
  const manifest: Manifest = { pack: 1, ...about, files: [...kept, ...planned.map(({ entry }) => entry)] };
  await writeWhole(join(folder, manifestName), textOf(manifest));
  for (const { name, content, isTheirs } of planned)
    if (force || !isTheirs) await writeWhole(join(folder, name), content);
  await writeWhole(join(folder, manifestName), textOf({ ...manifest, files: manifest.files.map(withoutWas) }));
  return { kept: force ? [] : planned.filter(({ isTheirs }) => isTheirs).map(({ name }) => name) };
};
