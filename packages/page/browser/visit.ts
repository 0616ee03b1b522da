import { createHash } from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { type PageData, pageOf } from "@solvewright/press";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { describe, expect, inject } from "vitest";
import { pageFile } from "../../../scripts/page.mjs";
import { dataOf } from "./puzzles.ts";

const endpoint = inject("browser");

/** Tests that need a browser; skipped where there is none. */
export const inBrowser: typeof describe.skip = describe.skipIf(endpoint === "");

let connected: Promise<Browser> | undefined;
export const browser = (): Promise<Browser> => (connected ??= chromium.connect(endpoint));

/** The page with that puzzle as a file on disk; its address. */
export const fileOf = (data: PageData): string => {
  const html = pageOf(readFileSync(pageFile, "utf8"), data);
  const path = join(inject("pages"), `${createHash("sha256").update(html).digest("hex").slice(0, 12)}.html`);
  writeFileSync(path, html);
  return pathToFileURL(path).href;
};

export const phone: BrowserContextOptions = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };
export const desktop: BrowserContextOptions = { viewport: { width: 1280, height: 800 } };

/** Someone who looks at the page. */
export interface Visitor {
  readonly page: Page;
  readonly address: string;
  /** Keys one after the other, wherever the focus is. */
  press(...keys: readonly string[]): Promise<void>;
  click(cell: string, ...modifiers: readonly ("Shift" | "ControlOrMeta")[]): Promise<void>;
  tap(cell: string): Promise<void>;
  /** A button of the strip, by its name. */
  strip(name: string): Promise<void>;
  /** What a cell is called. */
  named(cell: string): Promise<string>;
  /** What was announced last. */
  announced(): Promise<string>;
  /** Waits until the helper can answer. */
  helped(): Promise<void>;
}

/** Runs in the page. */
const middleOf = ({ selector, name }: { selector: string; name: string | undefined }) => {
  const found = [...document.querySelectorAll<HTMLElement>(selector)].find(
    (element) => name === undefined || (element.getAttribute("aria-label") ?? element.textContent) === name,
  );
  const { x, y, width, height } = found!.getBoundingClientRect();
  return { x: x + width / 2, y: y + height / 2 };
};

const visitorOn = (page: Page, address: string): Visitor => {
  const cellAt = (cell: string) => page.locator(`[data-cell="${cell}"]`);
  /** The first of these that bears that name, at its middle; nothing is waited for. */
  const tap = async (selector: string, name?: string): Promise<void> => {
    const { x, y } = await page.evaluate(middleOf, { selector, name });
    await page.touchscreen.tap(x, y);
  };
  return {
    page,
    address,
    press: async (...keys) => {
      for (const key of keys) await page.keyboard.press(key);
    },
    click: (cell, ...modifiers) => cellAt(cell).click({ modifiers: [...modifiers] }),
    tap: (cell) => tap(`[data-cell="${cell}"]`),
    strip: (name) => tap(".strip button", name),
    named: async (cell) => (await cellAt(cell).getAttribute("aria-label"))!,
    announced: async () => (await page.getByRole("status").textContent())!,
    helped: async () => {
      await page.locator(".page[data-helper='ready']").waitFor();
    },
  };
};

/** Everything that a page must not do: ask for anything, breach its policy, complain. */
const watched = (page: Page, address: string): readonly string[] => {
  const faults: string[] = [];
  page.on("request", (request) => {
    const url = request.url();
    if (url !== address && !url.startsWith("blob:") && !url.startsWith("data:")) faults.push(`asked for ${url}`);
  });
  page.on("pageerror", (error) => faults.push(String(error)));
  page.on("console", (message) => faults.push(`said ${message.text()}`));
  return faults;
};

interface Options extends BrowserContextOptions {
  /** A script that runs before the page's own. */
  readonly before?: string;
}

/** Opens the page with that puzzle, lets a visitor loose on it, and sees to it that it kept quiet. */
export const visit = async (
  puzzle: string | PageData,
  { before, ...options }: Options,
  act: (visitor: Visitor) => Promise<void>,
): Promise<void> => {
  const context = await (await browser()).newContext({ reducedMotion: "reduce", ...options });
  context.setDefaultTimeout(10_000);
  try {
    const address = fileOf(typeof puzzle === "string" ? dataOf(puzzle) : puzzle);
    const page = await context.newPage();
    const faults = watched(page, address);
    if (before) await page.addInitScript(before);
    await page.goto(address);
    await page.locator(".page").waitFor(); // the puzzle is unpacked first
    await act(visitorOn(page, address));
    expect(faults).toEqual([]);
  } finally {
    await context.close();
  }
};
