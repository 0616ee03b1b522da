import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";
import process from "node:process";
import { type Browser, launch, type Page } from "puppeteer-core";
import type { Visitor } from "./visit.ts";

const isProgram = (path: string): boolean => {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};

const onPath = (): string[] =>
  (process.env.PATH ?? "")
    .split(delimiter)
    .flatMap((folder) => ["firefox-esr", "firefox"].map((name) => join(folder, name)))
    .filter(isProgram);

const started = (executablePath: string): Promise<Browser> =>
  launch({ browser: "firefox", executablePath, extraPrefsFirefox: { "ui.prefersReducedMotion": 1 } });

/** The Firefox on the PATH (Debian's is firefox-esr), driven over WebDriver BiDi; undefined where none starts. */
export const firefoxHere = async (): Promise<Browser | undefined> => {
  const [program] = onPath();
  return program === undefined ? undefined : started(program).catch(() => undefined);
};

export interface FoxVisitor extends Pick<Visitor, "press" | "named" | "announced"> {
  readonly page: Page;
  /** Waits until the helper can answer. */
  helped(): Promise<void>;
  /** Waits until an element has that text in it. */
  shows(selector: string, text: string): Promise<void>;
}

const visitorOn = (page: Page): FoxVisitor => ({
  page,
  press: async (...keys) => {
    for (const key of keys) {
      const [last, ...held] = key.split("+").reverse() as [string, ...string[]];
      for (const modifier of held) await page.keyboard.down(modifier as "Control");
      await page.keyboard.press(last as "Enter");
      for (const modifier of held) await page.keyboard.up(modifier as "Control");
    }
  },
  named: (cell) => page.$eval(`[data-cell="${cell}"]`, (element) => element.getAttribute("aria-label")!),
  announced: () => page.$eval("[role=status]", (element) => element.textContent!),
  helped: async () => {
    await page.waitForSelector(".page[data-helper='ready']");
  },
  shows: async (selector, text) => {
    await page.waitForFunction(
      (where, what) => [...document.querySelectorAll(where)].some(({ textContent }) => textContent?.includes(what)),
      {},
      selector,
      text,
    );
  },
});

/** Opens a page in Firefox and lets a visitor loose on it; gives back whatever the page complained about or asked for. */
export const foxVisit = async (
  browser: Browser,
  address: string,
  act: (visitor: FoxVisitor) => Promise<void>,
): Promise<readonly string[]> => {
  const page = await browser.newPage();
  const faults: string[] = [];
  page.setDefaultTimeout(20_000);
  page.on("pageerror", (error) => faults.push(String(error)));
  page.on("console", (message) => faults.push(`said ${message.text()}`));
  page.on("request", (request) => {
    if (request.url() !== address && !/^(blob|data):/.test(request.url())) faults.push(`asked for ${request.url()}`);
  });
  try {
    await page.setViewport({ width: 1280, height: 800 });
    await page.goto(address);
    await page.waitForSelector(".page"); // the puzzle is unpacked first
    await act(visitorOn(page));
    return faults;
  } finally {
    await page.close();
  }
};
