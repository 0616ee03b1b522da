import { spawnSync } from "node:child_process";
import { accessSync, constants, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import process from "node:process";

export const isOnPath = (program: string): boolean =>
  (process.env.PATH ?? "").split(delimiter).some((folder) => {
    try {
      accessSync(join(folder, program), constants.X_OK);
      return true;
    } catch {
      return false;
    }
  });

let folder: string | undefined;

/** A folder for files of this run only. */
export const scratch = (): string => {
  if (folder === undefined) {
    const made = mkdtempSync(join(tmpdir(), "solvewright-bench-"));
    process.on("exit", () => rmSync(made, { recursive: true, force: true }));
    folder = made;
  }
  return folder;
};

const repeats = 10;

/** Milliseconds of one run of a shell command, of ten in one shell. */
export const shellMs = (command: string): number => {
  const start = performance.now();
  spawnSync("sh", ["-c", `i=0; while [ $i -lt ${repeats} ]; do ${command}; i=$((i+1)); done`], { stdio: "ignore" });
  return (performance.now() - start) / repeats;
};
