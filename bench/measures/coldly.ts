import { spawnSync } from "node:child_process";
import { join } from "node:path";
import process from "node:process";
import { root } from "../root.ts";

/** Milliseconds in which a new process reads and judges a puzzle and plans it, or answers its first question. */
export const coldly = (work: "plan" | "why", file: string): number => {
  const args = [...process.execArgv, join(root, "bench/cold.ts"), work, file];
  const { stdout, stderr, status } = spawnSync(process.execPath, args, { encoding: "utf8" });
  if (status !== 0) throw new Error(stderr);
  return Number(stdout);
};
