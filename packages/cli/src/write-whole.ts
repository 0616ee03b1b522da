import { rename, rm, writeFile } from "node:fs/promises";

/** Writes to a temporary name beside it and renames, so that nobody ever meets half a file. */
export const writeWhole = async (path: string, content: string | Uint8Array): Promise<void> => {
  const unfinished = `${path}.part`;
  try {
    await writeFile(unfinished, content);
    await rename(unfinished, path);
  } catch (error) {
    await rm(unfinished, { force: true });
    throw error;
  }
};
