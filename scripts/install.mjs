/** Makes node_modules match package-lock.json; does nothing when it does already. Uses Node built-ins only. */
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("..", import.meta.url));

const readJson = (path) => JSON.parse(readFileSync(join(root, path), "utf8"));
const packagesIn = (lockFile) => (existsSync(join(root, lockFile)) ? readJson(lockFile).packages : {});

/** What npm leaves out on purpose: builds for other systems. */
const mayBeAbsent = (entry) => entry.optional === true || entry.devOptional === true;
const isSame = (wanted, found) =>
  found === undefined ? mayBeAbsent(wanted) : wanted.version === found.version && wanted.integrity === found.integrity;

/** Whether npm's own record of node_modules tells the same packages as `wanted`, no fewer and no more. */
export const isInstalled = (wanted, found) =>
  Object.keys(found).every((path) => path in wanted) &&
  Object.entries(wanted).every(([path, entry]) => path === "" || isSame(entry, found[path]));

/** Compares versions by their numbers: negative when `a` is older. */
export const compareVersions = (a, b) => {
  const [left, right] = [a, b].map((version) => version.split(".").map(Number));
  const at = left.findIndex((part, index) => part !== right[index]);
  return at < 0 ? 0 : left[at] - right[at];
};

const oldNode = () => {
  const least = readJson("package.json").engines.node.replace(">=", "");
  return compareVersions(process.versions.node, least) < 0
    ? `Solvewright needs Node ${least} or newer; this is Node ${process.versions.node}.`
    : undefined;
};

// Short waits between tries, so that a machine without network is told so soon.
const patience = ["--fetch-retry-mintimeout=1000", "--fetch-retry-maxtimeout=5000"];

const npmInstall = () =>
  spawnSync("npm", ["ci", "--include=dev", "--prefer-offline", "--loglevel=error", ...patience], {
    cwd: root,
    encoding: "utf8",
    shell: process.platform === "win32",
    stdio: ["ignore", "ignore", "pipe"],
  });

const withoutStack = (text) => text.replaceAll(/^npm error +at .*\n/gm, "").trim();

const failedInstall = () => {
  console.log("Installing what package-lock.json lists (once, about half a minute) ...");
  const { status, error, stderr } = npmInstall();
  if (error !== undefined) return `npm was not found (${error.message}): install Node together with npm.`;
  if (status === 0) return undefined;
  console.error(withoutStack(stderr));
  return "The packages could not be installed: `npm ci` failed for the reason above; is the package registry within reach?";
};

/** One sentence about what is missing, or undefined when all is there (perhaps after an install). */
const installProblem = () =>
  oldNode() ??
  (isInstalled(packagesIn("package-lock.json"), packagesIn("node_modules/.package-lock.json"))
    ? undefined
    : failedInstall());

/** Ends the process with one sentence when the packages cannot be had. */
export const ensureInstalled = () => {
  const problem = installProblem();
  if (problem === undefined) return;
  console.error(problem);
  process.exit(1);
};

if (process.argv[1] === fileURLToPath(import.meta.url)) ensureInstalled();
