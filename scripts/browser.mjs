/** Finds a Chromium for the browser tests, or installs one where that is possible. */
import { spawnSync } from "node:child_process";
import { accessSync, constants, readdirSync, statSync } from "node:fs";
import { homedir } from "node:os";
import { delimiter, join } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { ensureInstalled, root } from "./install.mjs";

const names = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome", "chrome", "microsoft-edge"];
const isWindows = process.platform === "win32";

const onPath = () =>
  (process.env.PATH ?? "")
    .split(delimiter)
    .flatMap((folder) => names.map((name) => join(folder, isWindows ? `${name}.exe` : name)));

const macApps = ["Chromium", "Google Chrome", "Microsoft Edge"];
const usualPlaces = () => {
  const { LOCALAPPDATA = "", PROGRAMFILES = "", "PROGRAMFILES(X86)": programs86 = "" } = process.env;
  const windows = [LOCALAPPDATA, PROGRAMFILES, programs86]
    .filter(Boolean)
    .flatMap((folder) => [
      join(folder, "Chromium/Application/chrome.exe"),
      join(folder, "Google/Chrome/Application/chrome.exe"),
      join(folder, "Microsoft/Edge/Application/msedge.exe"),
    ]);
  const mac = ["/", homedir()].flatMap((home) =>
    macApps.map((app) => join(home, `Applications/${app}.app/Contents/MacOS/${app}`)),
  );
  const linux = ["/usr/bin", "/usr/local/bin", "/snap/bin", "/usr/lib/chromium"].flatMap((folder) =>
    names.map((name) => join(folder, name)),
  );
  return { win32: windows, darwin: mac }[process.platform] ?? linux;
};

/** Where playwright keeps the browsers that it installs. */
const cacheFolder = () => {
  const { PLAYWRIGHT_BROWSERS_PATH, LOCALAPPDATA, XDG_CACHE_HOME } = process.env;
  if (PLAYWRIGHT_BROWSERS_PATH) return PLAYWRIGHT_BROWSERS_PATH;
  if (isWindows) return join(LOCALAPPDATA ?? homedir(), "ms-playwright");
  if (process.platform === "darwin") return join(homedir(), "Library/Caches/ms-playwright");
  return join(XDG_CACHE_HOME ?? join(homedir(), ".cache"), "ms-playwright");
};

const entriesOf = (folder) => {
  try {
    return readdirSync(folder).map((name) => join(folder, name));
  } catch {
    return [];
  }
};

const programs =
  /(^|[\\/])(chrome|chrome\.exe|headless_shell|headless_shell\.exe|chrome-headless-shell(\.exe)?|Chromium|Google Chrome for Testing)$/;
const programsIn = (folder, depth) =>
  depth === 0
    ? []
    : entriesOf(folder).flatMap((path) =>
        isFolder(path) ? programsIn(path, depth - 1) : programs.test(path) ? [path] : [],
      );

const inCache = () =>
  entriesOf(cacheFolder())
    .filter((path) => /chromium/.test(path))
    .sort()
    .reverse()
    .flatMap((path) => programsIn(path, 6));

const isFolder = (path) => statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
const isProgram = (path) => {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
};

/** Chromiums on this machine, the one to be tried first in front. Some may turn out not to start. */
export const browsersHere = () => {
  const { CHROMIUM_PATH } = process.env;
  const found = CHROMIUM_PATH ? [CHROMIUM_PATH] : [...onPath(), ...usualPlaces(), ...inCache()];
  return [...new Set(found)].filter(isProgram);
};

/** What to do where there is none. */
export const noBrowser =
  "Browser tests are skipped: no Chromium that starts was found; install one (Debian, as root: apt-get install chromium; anywhere: npx playwright-core install chromium-headless-shell) or name it in CHROMIUM_PATH.";

const install = () => {
  console.log("Installing a Chromium for the browser tests (once, about 100 MB) ...");
  const { status } = spawnSync("npx", ["--no-install", "playwright-core", "install", "chromium-headless-shell"], {
    cwd: root,
    shell: isWindows,
    stdio: "ignore",
    timeout: 180_000,
  });
  return status === 0 && browsersHere().length > 0;
};

/** True where there is a browser, if need be after an install; else says how to get one. */
export const ensureBrowser = () => {
  if (browsersHere().length > 0 || install()) return true;
  console.log(noBrowser);
  return false;
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  ensureInstalled();
  process.exitCode = ensureBrowser() ? 0 : 1;
}
