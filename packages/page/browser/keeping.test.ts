import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { dataOf, kettle, mill } from "./puzzles.ts";
import { desktop, fileOf, inBrowser, type Visitor, visit } from "./visit.ts";

const kept = ({ page }: Visitor, text: string) =>
  page.locator(".kept", { hasText: text }).waitFor({ state: "attached" });
const settle = async ({ click, press }: Visitor, cell: string, digit: string): Promise<void> => {
  await click(cell);
  await press(digit, "Enter");
};
const saved = async ({ page }: Visitor): Promise<string> => {
  const [download] = await Promise.all([page.waitForEvent("download"), page.getByText("Save to a file").click()]);
  const file = join(mkdtempSync(join(tmpdir(), "board-")), "board.json");
  await download.saveAs(file);
  return readFileSync(file, "utf8");
};
const opened = async ({ page }: Visitor, text: string): Promise<void> => {
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.getByText("Open a file").click()]);
  await chooser.setFiles({ name: "board.json", mimeType: "application/json", buffer: Buffer.from(text) });
};

/** As a full disk has it. */
const full = `IDBObjectStore.prototype.put = () => { throw new DOMException("no room", "QuotaExceededError"); };`;
/** As some private windows have it. */
const none = `IDBFactory.prototype.open = () => { throw new DOMException("not here", "SecurityError"); };`;

inBrowser("what was done", () => {
  test("survives a reload in the middle, with undo", async () => {
    await visit(kettle, desktop, async (visitor) => {
      const { page, press, click, named } = visitor;
      await kept(visitor, "kept on this device");
      await settle(visitor, "r1c1", "2");
      await click("r2c2");
      await press("3", "4", "r", "4");
      await page.waitForTimeout(500); // it is kept a moment later
      await page.reload();
      await expect.poll(() => named("r1c1")).toMatch(/^row 1, column 1, 2,/);
      expect(await named("r2c2")).toContain("marks 3 and 4, maybe the 4 of row 2");
      await click("r2c2");
      await press("Control+z", "Control+z", "Control+z", "Control+z");
      expect(await named("r1c1")).toContain("mark 2");
    });
  });

  test("goes over to the corrected puzzle, as far as it still has a place there", async () => {
    await visit(kettle, desktop, async (visitor) => {
      const { page } = visitor;
      await kept(visitor, "kept on this device");
      await settle(visitor, "r1c1", "2");
      await settle(visitor, "r1c2", "3");
      await page.waitForTimeout(500);
      const before = dataOf(kettle);
      const puzzle = { ...before.puzzle, givens: { ...before.puzzle.givens, r1c2: 4 } };
      const corrected = await page.context().newPage();
      await corrected.goto(fileOf({ ...before, puzzle, fingerprint: "corrected", formerly: before.fingerprint }));
      const named = (cell: string) => corrected.locator(`[data-cell='${cell}']`).getAttribute("aria-label");
      await expect.poll(() => named("r1c1")).toMatch(/^row 1, column 1, 2,/);
      expect(await named("r1c2")).toMatch(/^row 1, column 2, given 4/);
      await corrected.getByText("This puzzle has been corrected.").first().waitFor({ state: "attached" });
    });
  });

  test("of several puzzles is kept side by side", async () => {
    await visit(kettle, desktop, async (visitor) => {
      const { page, click, press, named } = visitor;
      await kept(visitor, "kept on this device");
      await settle(visitor, "r1c1", "2");
      await page.waitForTimeout(500);
      const other = await page.context().newPage();
      await other.goto(fileOf(dataOf(mill)));
      await other.locator("[data-cell='r1c6']").click();
      expect(await other.locator("[aria-label*=', 2,']").count()).toBe(0);
      await other.keyboard.press("5");
      await other.waitForTimeout(500);
      await other.close();
      await page.reload();
      await expect.poll(() => named("r1c1")).toMatch(/^row 1, column 1, 2,/);
      await click("r1c2");
      await press("1");
      expect(await named("r1c2")).toContain("mark 1");
    });
  });

  test("is kept nowhere where there is no storage or no room, and the page says so and works", async () => {
    for (const [before, text] of [
      [none, "not kept here"],
      [full, "not kept: the storage is full"],
    ] as const)
      await visit(kettle, { ...desktop, before }, async (visitor) => {
        await settle(visitor, "r1c1", "2");
        await kept(visitor, text);
        expect(await visitor.named("r1c1")).toMatch(/^row 1, column 1, 2,/);
        expect(await visitor.page.locator(".kept").isVisible()).toBe(true);
      });
  });

  test("goes into a file with times, nudges and wrong entries, and comes back out of it", async () => {
    let text = "";
    await visit(kettle, desktop, async (visitor) => {
      const { press, click, helped } = visitor;
      await helped();
      await settle(visitor, "r1c1", "1");
      await settle(visitor, "r1c2", "2");
      await click("r2c2");
      await press("n", "k", "Escape", "3", "4");
      text = await saved(visitor);
    });
    const file = JSON.parse(text);
    expect(file.settled).toEqual({ r1c1: 1, r1c2: 2 });
    expect(file.marks).toEqual({ r2c2: [3, 4] });
    expect(file.entries.map(({ did }: { did: string }) => did)).toEqual([
      "mark",
      "settle",
      "mark",
      "settle",
      "mark",
      "mark",
    ]);
    expect(file.nudges.map(({ asked }: { asked: string }) => asked)).toEqual(["nudge", "check"]);
    expect(file.entries[1]).toMatchObject({
      did: "settle",
      change: expect.arrayContaining([{ settled: "r1c1", from: null, to: 1 }]),
    });
    expect(file.entries.every(({ at }: { at: number }, k: number) => at >= (file.entries[k - 1]?.at ?? 0))).toBe(true);
    await visit(kettle, desktop, async (visitor) => {
      const { page, named } = visitor;
      await opened(visitor, text);
      await expect.poll(() => named("r2c2")).toContain("marks 3 and 4");
      expect(await page.locator(".note").textContent()).toMatch(/^The board of the file is here now/);
      await opened(visitor, text.replace(/"puzzle": "[^"]*"/, '"puzzle": "another"'));
      await expect.poll(() => page.locator(".note").textContent()).toMatch(/another puzzle/);
      await opened(visitor, "no board");
      await expect.poll(() => page.locator(".note").textContent()).toBe("That is no board file.");
      expect(await named("r2c2")).toContain("marks 3 and 4");
    });
  });
});
