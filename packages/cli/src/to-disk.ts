import { badUsage } from "./faults.ts";
import { printable } from "./printable.ts";

const refused: Readonly<Record<string, string>> = {
  EEXIST: "is a file and no folder",
  ENOTDIR: "lies in a file and not in a folder",
  ENOENT: "is not there",
  EACCES: "may not be written to",
  EPERM: "may not be written to",
  EROFS: "may not be written to",
  ENOSPC: "lies on a full disk",
};

/** Writes to a folder; what the disk refuses is said of that folder. */
export const toDisk = async <T>(folder: string, write: () => Promise<T>): Promise<T> => {
  try {
    return await write();
  } catch (error) {
    const reason = refused[(error as NodeJS.ErrnoException).code ?? ""];
    if (!reason) throw error;
    throw badUsage(`${printable(folder)} ${reason}.`, { read: folder, right: "a folder that may be written to" });
  }
};
