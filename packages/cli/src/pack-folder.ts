import { createHash } from "node:crypto";
import { mkdir, readFile, rename, writeFile } from "node:fs/promises";
import { join } from "node:path";

export interface PackFile {
  readonly name: string;
  readonly purpose: string;
  readonly content: string | Uint8Array;
}

/** Kept beside the files: what was written, so that a file changed by hand is known. */
const manifestName = "manifest.json";

interface Manifest {
  readonly pack: 1;
  readonly files: readonly { readonly name: string; readonly purpose: string; readonly sha256: string }[];
}

const hashOf = (content: string | Uint8Array): string => createHash("sha256").update(content).digest("hex");

/** Writes to a temporary name beside it and renames, so that no reader ever meets half a file. */
const writeWhole = async (path: string, content: string | Uint8Array): Promise<void> => {
  const unfinished = `${path}.part`;
  await writeFile(unfinished, content);
  await rename(unfinished, path);
};

const readIfThere = async (path: string): Promise<Uint8Array | undefined> => {
  try {
    return await readFile(path);
  } catch {
    return undefined;
  }
};

const manifestIn = async (folder: string): Promise<ReadonlyMap<string, string>> => {
  const bytes = await readIfThere(join(folder, manifestName));
  try {
    const { files } = JSON.parse(new TextDecoder().decode(bytes)) as Manifest;
    return new Map(files.map(({ name, sha256 }) => [name, sha256]));
  } catch {
    return new Map();
  }
};

/** Writes a pack's files; one that was changed by hand since it was written is kept unless `force`. */
export const writePack = async (
  folder: string,
  files: readonly PackFile[],
  force: boolean,
): Promise<{ kept: string[] }> => {
  await mkdir(folder, { recursive: true });
  const before = await manifestIn(folder);
  const kept: string[] = [];
  const entries: Manifest["files"][number][] = [];
  for (const { name, purpose, content } of files) {
    const path = join(folder, name);
    const there = await readIfThere(path);
    const isOurs = !there || hashOf(there) === before.get(name) || hashOf(there) === hashOf(content);
    if (!isOurs && !force) kept.push(name);
    else await writeWhole(path, content);
    entries.push({ name, purpose, sha256: hashOf(content) });
  }
  const manifest: Manifest = { pack: 1, files: entries };
  await writeWhole(join(folder, manifestName), `${JSON.stringify(manifest, null, 2)}\n`);
  return { kept };
};
