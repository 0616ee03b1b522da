import { expect, test } from "vitest";
import { kettle, kettleCells, mill } from "./puzzles.ts";
import { inBrowser, phone, visit } from "./visit.ts";

inBrowser("by touch", () => {
  test("a whole puzzle is solved with the strip", async () => {
    await visit(kettle, phone, async ({ page, tap, strip, helped }) => {
      await helped();
      for (const { cell, digit } of kettleCells) {
        await tap(cell);
        await strip(String(digit));
        await strip("Settle");
      }
      await page.getByRole("heading", { name: "That was the last one." }).waitFor();
    });
  });

  test("several cells, spot marks, undo and redo", async () => {
    await visit(kettle, phone, async ({ page, tap, strip, named }) => {
      await tap("r3c3");
      await strip("Several: each tap adds a cell");
      await tap("r3c4");
      await strip("3");
      await strip("4");
      expect(await named("r3c4")).toContain("marks 3 and 4");
      await strip("box");
      await strip("1");
      expect(await page.locator(".note").textContent()).toBe(
        "The 1 of the bottom right box is in one of these two cells.",
      );
      await strip("Undo");
      expect(await named("r3c4")).not.toContain("maybe");
      await strip("Redo");
      expect(await named("r3c3")).toContain("maybe the 1 of the bottom right box");
    });
  });

  test("a drag chooses what it passes over", async () => {
    await visit(kettle, phone, async ({ page, strip, named }) => {
      const box = (await page.locator("[data-cell='r1c2']").boundingBox())!;
      const far = (await page.locator("[data-cell='r1c4']").boundingBox())!;
      const client = await page.context().newCDPSession(page);
      const touch = (type: string, x?: number, y?: number) =>
        client.send("Input.dispatchTouchEvent", {
          type: type as "touchStart",
          touchPoints: x === undefined ? [] : [{ x, y: y! }],
        });
      await touch("touchStart", box.x + 20, box.y + 20);
      for (let x = box.x + 30; x < far.x + 20; x += 15) await touch("touchMove", x, box.y + 20);
      await page.waitForTimeout(150); // a finger that leaves in full flight would have its next tap taken for a halt
      await touch("touchEnd");
      await strip("4");
      for (const cell of ["r1c2", "r1c3", "r1c4"]) expect(await named(cell)).toContain("mark 4");
    });
  });

  test("one grid alone fills the screen", async () => {
    await visit(mill, phone, async ({ page, strip }) => {
      const sizeOf = async (cell: string) => (await page.locator(`[data-cell='${cell}']`).boundingBox())!;
      const small = await sizeOf("r1c6");
      await strip("One grid");
      const large = await sizeOf("r1c6");
      const last = await sizeOf("r6c11");
      expect(large.width).toBeGreaterThan(small.width * 1.5);
      expect(large.x).toBeGreaterThanOrEqual(0);
      expect(last.x + last.width).toBeLessThanOrEqual(390);
    });
  });

  test("two fingers make the board larger, one then moves it", async () => {
    await visit(mill, phone, async ({ page }) => {
      const client = await page.context().newCDPSession(page);
      const touch = (
        type: "touchStart" | "touchMove" | "touchEnd",
        ...points: readonly (readonly [number, number])[]
      ) => client.send("Input.dispatchTouchEvent", { type, touchPoints: points.map(([x, y], id) => ({ x, y, id })) });
      const placeOf = async () => (await page.locator("[data-cell='r7c4']").boundingBox())!;
      const before = await placeOf();
      await touch("touchStart", [150, 250], [200, 250]);
      for (let apart = 60; apart <= 100; apart += 10)
        await touch("touchMove", [175 - apart / 2, 250], [175 + apart / 2, 250]);
      await touch("touchEnd");
      const large = await placeOf();
      expect(large.width / before.width).toBeCloseTo(2, 1);
      await touch("touchStart", [250, 250]);
      for (let y = 260; y <= 330; y += 10) await touch("touchMove", [500 - y, y]);
      await touch("touchEnd");
      const moved = await placeOf();
      expect(moved.x - large.x).toBeCloseTo(-80, -1);
      expect(moved.y - large.y).toBeCloseTo(80, -1);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
    });
  });
});
