/** Finds a redis-server for the tests of the queue, or installs one where that is possible. */
import { spawnSync } from "node:child_process";
import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";

const isProgram = (path) => {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};

/** The redis-server on the PATH, undefined where there is none. */
export const redisHere = () =>
  (process.env.PATH ?? "")
    .split(delimiter)
    .map((folder) => join(folder, "redis-server"))
    .find(isProgram);

/** What to do where there is none. */
export const noRedis =
  "Tests of the queue are skipped: no redis-server was found on the PATH; install one (Debian, as root: apt-get install redis-server; macOS: brew install redis).";

// At run level 1 nothing is started by an install, but by systemd.
const env = { ...process.env, RUNLEVEL: "1", DEBIAN_FRONTEND: "noninteractive" };

const apt = (...args) => spawnSync("apt-get", args, { env, stdio: "ignore", timeout: 120_000 }).status === 0;
const fetched = () => apt("install", "-y", "--no-install-recommends", "redis-server");

/** The tests start a server of their own, so none is left running. */
const endService = () => spawnSync("systemctl", ["disable", "--now", "redis-server"], { stdio: "ignore" });

const install = () => {
  if (process.platform !== "linux" || process.getuid() !== 0) return false;
  console.log("Installing a redis-server for the tests of the queue (once, about 2 MB) ...");
  if (!fetched() && !(apt("update") && fetched())) return false;
  endService();
  return redisHere() !== undefined;
};

/** True where there is one, if need be after an install; else says how to get it. */
export const ensureRedis = () => {
  if (redisHere() !== undefined || install()) return true;
  console.log(noRedis);
  return false;
};

if (process.argv[1] === fileURLToPath(import.meta.url)) process.exitCode = ensureRedis() ? 0 : 1;
