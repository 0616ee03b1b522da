/**
 * `--to FOLDER FILE ...`: pictures of the try-it page in every state for each puzzle file, on three sizes of screen, in
 * light and dark, and as a sheet, for a person to look through. `--only STATE,STATE` takes these alone.
 */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import process from "node:process";
import { pathToFileURL } from "node:url";
import { accept, type Board, compile, fingerprint, read } from "@solvewright/engine";
import { pageDataOf, pageOf, type ShowData } from "@solvewright/press";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { noBrowser } from "../../../scripts/browser.mjs";
import { buildPage, pageFile } from "../../../scripts/page.mjs";
import { launched } from "./launch.ts";
import { type Stand, standOf } from "./stand.ts";

const screens = {
  phone: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 },
  tablet: { viewport: { width: 820, height: 1180 }, hasTouch: true, isMobile: true },
  desktop: { viewport: { width: 1280, height: 800 } },
} satisfies Record<string, BrowserContextOptions>;
type Screen = keyof typeof screens;
const schemes = ["light", "dark"] as const;

interface Seen {
  readonly page: Page;
  readonly board: Board;
  readonly stand: Stand;
}
type Reach = (seen: Seen) => Promise<void>;

/** Runs in the page: what is kept on the device is as if one had solved so far. */
const keep = ({ key, position }: { key: string; position: object }): Promise<void> =>
  new Promise((done) => {
    const asked = indexedDB.open("solvewright-try-it", 1);
    asked.onsuccess = () => {
      const kept = { position, done: [], undone: [], title: "", log: [], asked: [], taken: {}, spent: 0, began: 0 };
      const put = asked.result.transaction("progress", "readwrite").objectStore("progress");
      put.put({ ...kept, savedAt: Date.now() }, key).onsuccess = () => done();
    };
  });

const opened = async (page: Page, board: Board, position: object): Promise<void> => {
  await page.evaluate(keep, {
    key: fingerprint(board.puzzle),
    position: { settled: {}, marks: {}, spots: [], ...position },
  });
  await page.reload();
  await page.locator(".page[data-helper='ready']").waitFor();
};

const keys = async (page: Page, cell: string, ...pressed: readonly string[]): Promise<void> => {
  await page.locator(`[data-cell="${cell}"]`).click();
  for (const key of pressed) await page.keyboard.press(key);
};

const typed = (digit: number): readonly string[] => [...String(digit)];

/** Marks in the next cells, two of them chosen, and a spot mark. */
const solving: Reach = async ({ page, board, stand }) => {
  const [first, second, third] = stand.toCome as [[string, number], [string, number], [string, number]];
  await opened(page, board, { settled: stand.settled, marks: { [second[0]]: [1, 2], [third[0]]: [1, 2, 3, 4] } });
  await keys(page, first[0], "r", "2", "1", "3");
};

const nudged =
  (grade: number): Reach =>
  async ({ page, board, stand }) => {
    await opened(page, board, { settled: stand.settled });
    await keys(page, stand.toCome[0]![0], "Escape", "n");
    await page.locator(".grade").first().waitFor();
    for (let k = 1; k < grade; k++) await page.keyboard.press("n");
  };

const why: Reach = async ({ page, board, stand }) => {
  await opened(page, board, { settled: stand.settled });
  const [cell, digit] = stand.toCome[1]!;
  const grid = board.puzzle.grids[board.canvas.grids[board.canvas.names.indexOf(cell)]![0]!]!;
  await keys(page, cell, "w", ...typed(grid.digits.find((other) => other !== digit)!));
  await page.locator(".help .line").waitFor();
};

const checked =
  (where: boolean): Reach =>
  async ({ page, board, stand }) => {
    const [[cell, right], [other]] = stand.toCome as [[string, number], [string, number]];
    const wrong = right === 1 ? 2 : 1;
    await opened(page, board, { settled: { ...stand.settled, [cell]: wrong } });
    await keys(page, other, "Escape", "k");
    const show = page.locator("[data-action='where']");
    await show.waitFor();
    if (where) await show.click();
  };

const finish =
  (open: boolean): Reach =>
  async ({ page, board, stand }) => {
    const [last, ...others] = [...stand.toCome].reverse() as [[string, number], ...[string, number][]];
    await opened(page, board, { settled: { ...stand.settled, ...Object.fromEntries(others) } });
    await keys(page, last[0], ...typed(last[1]), "Enter");
    const walkthrough = page.locator(".walkthrough summary");
    await walkthrough.waitFor({ timeout: 60_000 });
    if (open) await walkthrough.click();
  };

const rules: Reach = async ({ page }) => {
  const link = page.locator("[data-action='rules']").first();
  if (await link.isVisible()) await link.click();
};

const settings: Reach = async ({ page }) => {
  await page.getByText("Settings").click();
  await page.getByText("Settings").scrollIntoViewIfNeeded();
};

const reaches: Readonly<Record<string, Reach>> = {
  start: async () => {},
  solving,
  "nudge-1": nudged(1),
  "nudge-2": nudged(2),
  "nudge-3": nudged(3),
  why,
  check: checked(false),
  where: checked(true),
  finish: finish(false),
  walkthrough: finish(true),
  rules,
  settings,
};

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

const addressOf = ({ folder, board, stand }: Studio): string => {
  const path = join(folder, "page.html");
  writeFileSync(path, pageOf(readFileSync(pageFile, "utf8"), pageDataOf(board, showOf(stand))));
  return pathToFileURL(path).href;
};

const taken = async (studio: Studio, screen: Screen, scheme: "light" | "dark", state: string, to: string) => {
  const context = await studio.browser.newContext({
    ...screens[screen],
    colorScheme: scheme,
    reducedMotion: "reduce",
  });
  try {
    const page = await context.newPage();
    await page.goto(addressOf(studio));
    await page.locator(".page[data-helper='ready']").waitFor();
    await page.evaluate(() => document.fonts.ready);
    await reaches[state]!({ page, ...studio });
    await page.screenshot({ path: to });
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

const boardOf = (file: string): Board => compile(accept(read(readFileSync(file, "utf8")))!);

const everyState = async (studio: Studio, name: string, to: string, states: readonly string[]): Promise<void> => {
  for (const screen of Object.keys(screens) as Screen[])
    for (const scheme of schemes)
      for (const state of states)
        await taken(studio, screen, scheme, state, join(to, `${name}-${screen}-${scheme}-${state}.png`));
  await sheet(studio, join(to, `${name}.pdf`));
};

const run = async (args: readonly string[]): Promise<void> => {
  const [server] = await Promise.all([launched(), buildPage()]);
  if (!server) throw new Error(noBrowser);
  const browser = await chromium.connect(server.wsEndpoint());
  const folder = mkdtempSync(join(tmpdir(), "solvewright-pictures-"));
  const after = (flag: string) => (args.includes(flag) ? args[args.indexOf(flag) + 1] : undefined);
  const to = after("--to");
  if (!to) throw new Error("say where to: --to FOLDER FILE ...");
  mkdirSync(to, { recursive: true });
  const states = after("--only")?.split(",") ?? Object.keys(reaches);
  for (const file of args.filter((arg) => arg.endsWith(".yaml"))) {
    const board = boardOf(file);
    const studio = { browser, folder, board, stand: standOf(board, 0.4) };
    await everyState(studio, basename(file, ".puzzle.yaml"), to, states);
  }
  rmSync(folder, { recursive: true });
  await server.close();
};

await run(process.argv.slice(2));
