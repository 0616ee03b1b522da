/**
 * `FILE ...`: how long the try-it page of each puzzle takes to answer, as lines of JSON, in milliseconds. Chromium slows
 * the page's processor down and leaves its worker as it is, so the slowest answer of a page that is not slowed is also
 * told so many times over. `npm run bench -- --only page` asks it.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import process from "node:process";
import { pathToFileURL } from "node:url";
import { accept, type Board, compile, read } from "@solvewright/engine";
import { pageDataOf, pageOf } from "@solvewright/press";
import { type Browser, chromium, type Page } from "playwright-core";
import { buildPage, pageFile } from "../../../scripts/page.mjs";
import { launched } from "./launch.ts";
import { type Stand, standOf } from "./stand.ts";

const slower = 4;

/** At how many stops on the way through a puzzle something is asked. */
const stops = 6;

/** Runs in the page: presses keys on the board, and tells the milliseconds until the help shows an answer. */
const timed = async ({ cell, keys, answer }: { cell: string; keys: readonly string[]; answer: string }) => {
  // Nothing here has a name: what compiles it for Node would call a helper that the page has not.
  document.querySelector<HTMLElement>(`[data-cell="${cell}"]`)?.focus();
  const begun = performance.now();
  return new Promise<number>((done) => {
    const observer = new MutationObserver(() => {
      if (!document.querySelector(answer)) return;
      observer.disconnect();
      done(performance.now() - begun);
    });
    observer.observe(document.querySelector(".help")!, { childList: true, subtree: true });
    for (const key of keys)
      document.activeElement!.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true }));
  });
};

/** Runs in the page: settles digits in their cells. */
const enter = (digits: readonly (readonly [cell: string, digit: number])[]): void => {
  for (const [cell, digit] of digits) {
    const element = document.querySelector<HTMLElement>(`[data-cell="${cell}"]`)!;
    element.focus();
    for (const key of ["Escape", "Escape"])
      element.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true }));
    element.blur();
    element.focus(); // nothing was chosen any more, so now it is
    for (const key of [String(digit), "Enter"])
      element.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true }));
  }
};

interface Times {
  readonly nudge: number[];
  readonly why: number[];
}

const another = (board: Board, cell: string, digit: number): number => {
  const grid = board.puzzle.grids[board.canvas.grids[board.canvas.names.indexOf(cell)]![0]!]!;
  return grid.digits.find((other) => other !== digit)!;
};

/** At some stops on the way through the puzzle a nudge, and why the next cell but one can't be another digit. */
const asked = async (page: Page, board: Board, { toCome }: Stand): Promise<Times> => {
  const times: Times = { nudge: [], why: [] };
  const step = Math.floor(toCome.length / stops);
  for (let stop = 0; stop < stops; stop++) {
    const [next, other] = toCome.slice(stop * step);
    await page.keyboard.press("Escape");
    times.nudge.push(await page.evaluate(timed, { cell: next![0], keys: ["n"], answer: ".grade" }));
    await page.keyboard.press("Escape");
    const question = { cell: other![0], keys: ["w", String(another(board, ...other!))], answer: ".help .line" };
    times.why.push(await page.evaluate(timed, question));
    await page.keyboard.press("Escape");
    await page.evaluate(enter, toCome.slice(stop * step, (stop + 1) * step));
  }
  return times;
};

/** Milliseconds from the key to the answer in the order asked, and from the start to a helper that can answer. */
interface AnswerTimes extends Times {
  readonly ready: number;
}

/** Opens a page with its processor slowed so many times, and asks. */
const answerTimes = async (
  browser: Browser,
  address: string,
  board: Board,
  stand: Stand,
  rate: number,
): Promise<AnswerTimes> => {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, reducedMotion: "reduce" });
  const page = await context.newPage();
  const client = await context.newCDPSession(page);
  await client.send("Emulation.setCPUThrottlingRate", { rate });
  await page.goto(address);
  await page.locator(".page[data-helper='ready']").waitFor();
  const ready = await page.evaluate(() => performance.now());
  await page.waitForTimeout(1500); // a solver looks at the board first, and meanwhile the helper warms itself up
  const times = await asked(page, board, stand);
  await context.close();
  return { ready, ...times };
};

const figuresOf = (slowed: AnswerTimes, plain: AnswerTimes): Readonly<Record<string, number>> => ({
  "ready ms": slowed.ready,
  "first nudge ms": slowed.nudge[0]!,
  "most nudge ms": Math.max(...slowed.nudge),
  "first why ms": slowed.why[0]!,
  "most why ms": Math.max(...slowed.why),
  [`most plain ms, ${slower} times`]: slower * Math.max(...plain.nudge, ...plain.why),
});

const run = async (files: readonly string[]): Promise<void> => {
  const [server] = await Promise.all([launched(), buildPage()]);
  if (!server) return;
  const browser = await chromium.connect(server.wsEndpoint());
  const folder = mkdtempSync(join(tmpdir(), "solvewright-page-"));
  const page = join(folder, "page.html");
  for (const file of files) {
    const board = compile(accept(read(readFileSync(file, "utf8")))!);
    const stand = standOf(board, 0);
    writeFileSync(page, pageOf(readFileSync(pageFile, "utf8"), pageDataOf(board)));
    const times = (rate: number) => answerTimes(browser, pathToFileURL(page).href, board, stand, rate);
    const figures = figuresOf(await times(slower), await times(1));
    process.stdout.write(`${JSON.stringify({ of: basename(file, ".puzzle.yaml"), figures })}\n`);
  }
  rmSync(folder, { recursive: true });
  await server.close();
};

await run(process.argv.slice(2));
