import { type Board, fingerprint } from "@solvewright/engine";
import type { Page } from "playwright-core";
import type { Stand } from "./stand.ts";

/** A page that is looked at, and how far its solver may be. */
export interface Seen {
  readonly page: Page;
  readonly board: Board;
  readonly stand: Stand;
}
/** Brings a page to a state. */
export type Reach = (seen: Seen) => Promise<void>;

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

/** The topmost grid alone, two of its cells chosen and marked. */
const lens: Reach = async (seen) => {
  const { page, board, stand } = seen;
  await opened(page, board, { settled: stand.settled });
  await page.locator("[data-action='one-grid']").click();
  const top = board.puzzle.grids.length - 1;
  const [cell] = stand.toCome.find(([name]) => board.canvas.grids[board.canvas.names.indexOf(name)]!.includes(top))!;
  await keys(page, cell, "1", "2");
};

/** In the frame of another site, which is written beside the page as embed.html. */
const embedded: Reach = async ({ page }) => {
  await page.goto(page.url().replace("page.html", "embed.html"));
  const frame = page.frameLocator("iframe");
  await frame.locator(".page[data-helper='ready']").waitFor();
  await frame.locator("[data-action='nudge']:visible").first().click();
  await frame.locator(".grade").first().waitFor();
};

/** As those have it who set their letters to twice the size. */
const large: Reach = async (seen) => {
  await nudged(3)(seen);
  await seen.page.evaluate(() => {
    document.documentElement.style.fontSize = "200%";
  });
};

const printed: Reach = async (seen) => {
  const { page, board, stand } = seen;
  await opened(page, board, { settled: stand.settled });
  await page.emulateMedia({ media: "print", colorScheme: "light" });
  await page.evaluate(() => {
    document.body.style.padding = "14mm";
  });
};

export const reaches: Readonly<Record<string, Reach>> = {
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
  lens,
  large,
  "large-start": async ({ page }) => {
    await page.evaluate(() => {
      document.documentElement.style.fontSize = "200%";
    });
  },
  printed,
  embedded,
};
