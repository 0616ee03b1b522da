import { spawn } from "node:child_process";
import type { Asked } from "../../../command.ts";

/** How often a running program is looked after, in milliseconds. */
const glance = 100;

/**
 * Runs a program of this machine without a shell. "missing" where it is not on the PATH; "stopped" once the user asks
 * to stop, and then it is ended; else its exit code.
 */
export const runProgram = (
  name: string,
  args: readonly string[],
  { stopped, input = "" }: { readonly stopped: Asked["stopped"]; readonly input?: string },
): Promise<number | "missing" | "stopped"> =>
  new Promise((resolve, reject) => {
    const child = spawn(name, args, { stdio: ["pipe", "ignore", "ignore"] });
    let isStopped = false;
    const watch = setInterval(() => {
      if (!stopped()) return;
      isStopped = true;
      child.kill();
    }, glance);
    child.on("error", (error: NodeJS.ErrnoException) => {
      clearInterval(watch);
      if (error.code === "ENOENT") resolve("missing");
      else reject(error);
    });
    child.on("close", (code) => {
      clearInterval(watch);
      resolve(isStopped || stopped() ? "stopped" : (code ?? 1));
    });
    // It may have ended before it has read all of it.
    child.stdin.on("error", () => {});
    child.stdin.end(input);
  });
