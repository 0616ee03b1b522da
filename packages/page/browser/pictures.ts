/**
 * Pictures of the try-it page in all its states, for a person to look through after a change: those of docs/try-it.md;
 * with `--to FOLDER FILE ...` every state of each puzzle file, on three sizes of screen, in light and dark, and as a sheet
 * (`--only STATE,STATE` takes these alone).
 */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import process from "node:process";
import { fileURLToPath, pathToFileURL } from "node:url";
import { accept, type Board, compile, read } from "@solvewright/engine";
import { pageDataOf, pageOf, type ShowData } from "@solvewright/press";
import { type Browser, type BrowserContextOptions, chromium } from "playwright-core";
import { noBrowser } from "../../../scripts/browser.mjs";
import { buildPage, pageFile } from "../../../scripts/page.mjs";
import { launched } from "./launch.ts";
import { reaches } from "./reaches.ts";
import { type Stand, standOf } from "./stand.ts";

const screens = {
  phone: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 },
  tablet: { viewport: { width: 820, height: 1180 }, hasTouch: true, isMobile: true },
  desktop: { viewport: { width: 1280, height: 800 } },
  /** A desktop at 400 %. */
  zoomed: { viewport: { width: 320, height: 200 }, deviceScaleFactor: 4 },
  /** A4 at 96 dots an inch. */
  sheet: { viewport: { width: 794, height: 1123 } },
} satisfies Record<string, BrowserContextOptions>;
type Screen = keyof typeof screens;

const show: ShowData = { name: "Plain Reasons", date: "27 November" };

/** The show with a time for each cell, as a take would give them. */
const showOf = ({ toCome, settled }: Stand): ShowData => {
  const cells = [...Object.keys(settled), ...toCome.map(([cell]) => cell)];
  const times = cells.map((cell, k): [string, number] => [cell, 90 + 8 * k]);
  return { ...show, moments: { address: "https://example.org/show?t={seconds}", cells: Object.fromEntries(times) } };
};

interface Studio {
  readonly browser: Browser;
  readonly folder: string;
  readonly board: Board;
  readonly stand: Stand;
}

/** The two lines of docs/guide.md in a page of somebody else. */
const site = `<!doctype html><html lang="en"><title>A site</title><body style="max-width: 62rem; margin: 2rem auto; padding: 0 1rem; font: 1.1rem/1.5 Georgia, serif; background: #fffdf5">
<h1 style="font-weight: 400">Wednesday’s puzzle</h1><p>Have a go at it here, and tell us how far you came.</p>
<iframe src="page.html" title="Paper Mill" sandbox="allow-scripts allow-downloads allow-modals"
  style="width: 100%; height: 44rem; border: 0"></iframe></body></html>`;

const addressOf = ({ folder, board, stand }: Studio): string => {
  const path = join(folder, "page.html");
  writeFileSync(path, pageOf(readFileSync(pageFile, "utf8"), pageDataOf(board, showOf(stand))));
  writeFileSync(join(folder, "embed.html"), site);
  return pathToFileURL(path).href;
};

interface Shot {
  readonly screen: Screen;
  readonly scheme: "light" | "dark";
  readonly state: string;
}

const taken = async (studio: Studio, { screen, scheme, state }: Shot, to: string): Promise<void> => {
  const look: BrowserContextOptions = { ...screens[screen], colorScheme: scheme, reducedMotion: "reduce" };
  const context = await studio.browser.newContext(look);
  try {
    const page = await context.newPage();
    await page.goto(addressOf(studio));
    await page.locator(".page[data-helper='ready']").waitFor();
    await page.evaluate(() => document.fonts.ready);
    await reaches[state]!({ page, ...studio });
    await page.screenshot({ path: to, type: "webp", quality: 80 });
  } catch (error) {
    console.log(`${to}: ${String(error).split("\n")[0]}`);
  } finally {
    await context.close();
  }
};

const sheet = async (studio: Studio, to: string): Promise<void> => {
  const page = await studio.browser.newPage();
  await page.goto(addressOf(studio));
  await page.locator(".page[data-helper='ready']").waitFor();
  await page.pdf({ path: to, format: "A4", printBackground: true });
  await page.close();
};

const studioOf = (browser: Browser, folder: string, file: string): Studio => {
  const board = compile(accept(read(readFileSync(file, "utf8")))!);
  return { browser, folder, board, stand: standOf(board, 0.4) };
};

const states = Object.keys(reaches).filter((state) => !["lens", "large", "printed", "embedded"].includes(state));

const everyState = async (studio: Studio, name: string, to: string, wanted: readonly string[]): Promise<void> => {
  for (const screen of ["phone", "tablet", "desktop"] as const)
    for (const scheme of ["light", "dark"] as const)
      for (const state of wanted)
        await taken(studio, { screen, scheme, state }, join(to, `${name}-${screen}-${scheme}-${state}.webp`));
  await sheet(studio, join(to, `${name}.pdf`));
};

/** What docs/try-it.md shows: by puzzle of examples/, screen, colours and state. */
const shown = [
  "paper-mill: phone light start, phone light solving, phone light nudge-1, phone light nudge-2, phone light nudge-3",
  "paper-mill: phone dark why, phone light check, phone light where, phone dark finish, phone light rules",
  "paper-mill: tablet light solving, tablet dark nudge-3",
  "paper-mill: desktop light start, desktop light nudge-3, desktop dark solving, desktop dark why, desktop light where",
  "paper-mill: desktop light walkthrough, desktop light embedded, zoomed light nudge-2, phone light large, phone light large-start",
  "paper-mill: sheet light printed",
  "ribbon-garden: phone light solving, phone light lens, phone dark lens, desktop light nudge-2",
];

const root = fileURLToPath(new URL("../../../", import.meta.url));

const forDocs = async (browser: Browser, folder: string, only: string): Promise<void> => {
  for (const line of shown) {
    const [puzzle, shots] = line.split(": ") as [string, string];
    const studio = studioOf(browser, folder, join(root, `examples/${puzzle}.puzzle.yaml`));
    for (const name of shots.split(", ").filter((shot) => shot.includes(only))) {
      const [screen, scheme, state] = name.split(" ") as [Screen, "light" | "dark", string];
      const file = `${puzzle === "paper-mill" ? "" : `${puzzle}-`}${screen}-${scheme}-${state}.webp`;
      await taken(studio, { screen, scheme, state }, join(root, "docs/try-it", file));
    }
  }
};

const run = async (args: readonly string[]): Promise<void> => {
  const [server] = await Promise.all([launched(), buildPage()]);
  if (!server) throw new Error(noBrowser);
  const browser = await chromium.connect(server.wsEndpoint());
  const folder = mkdtempSync(join(tmpdir(), "solvewright-pictures-"));
  const after = (flag: string) => (args.includes(flag) ? args[args.indexOf(flag) + 1] : undefined);
  const [to, only] = [after("--to"), after("--only")];
  mkdirSync(to ?? join(root, "docs/try-it"), { recursive: true });
  if (!to) await forDocs(browser, folder, only ?? "");
  else
    for (const file of args.filter((arg) => arg.endsWith(".yaml")))
      await everyState(studioOf(browser, folder, file), basename(file, ".puzzle.yaml"), to, only?.split(",") ?? states);
  rmSync(folder, { recursive: true });
  await server.close();
};

await run(process.argv.slice(2));
