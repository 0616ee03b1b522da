import { expect, test } from "vitest";
import { kettle, kettleCells, kettleDigit } from "./puzzles.ts";
import { desktop, inBrowser, visit } from "./visit.ts";

inBrowser("by keyboard alone", () => {
  test("a whole puzzle is solved, and its end is quiet", async () => {
    await visit(kettle, desktop, async ({ page, press, helped, named, announced }) => {
      await helped();
      await press("Tab");
      expect(await page.evaluate("document.activeElement.dataset.cell")).toBe("r1c1");
      for (let row = 1; row <= 4; row++) {
        for (let column = 1; column <= 4; column++) {
          if (row !== 4 || column !== 4) await press(String(kettleDigit(row, column)), "Enter");
          if (column < 4) await press("ArrowRight");
        }
        await press("Home", "ArrowDown");
      }
      for (const { cell, digit } of kettleCells) expect(await named(cell)).toContain(`, ${digit}`);
      await page.getByRole("heading", { name: "That was the last one." }).waitFor();
      expect(await announced()).toBe("Kettle is finished. Every digit is in its place.");
    });
  });

  test("marks in several cells, settled where one is left; undo and redo without end", async () => {
    await visit(kettle, desktop, async ({ press, named }) => {
      await press("Tab", "Shift+ArrowRight", "1", "2");
      expect(await named("r1c1")).toContain("marks 1 and 2");
      expect(await named("r1c2")).toContain("marks 1 and 2");
      await press("Escape", "ArrowLeft", "1", "Enter");
      expect(await named("r1c1")).toMatch(/^row 1, column 1, 2,/);
      expect(await named("r1c2")).toContain("mark 1,");
      await press("ArrowRight", "Enter");
      expect(await named("r1c2")).toMatch(/^row 1, column 2, 1,/);
      await press("Control+z", "Control+z", "Control+z", "Control+z", "Control+z", "Control+z");
      for (const cell of ["r1c1", "r1c2"]) expect(await named(cell)).toContain("empty");
      await press(...Array<string>(5).fill("Control+Shift+z"));
      expect(await named("r1c2")).toMatch(/^row 1, column 2, 1,/);
    });
  });

  test("a spot mark is a letter and a digit, named with its house", async () => {
    await visit(kettle, desktop, async ({ page, click, press, named }) => {
      await click("r2c3");
      await click("r2c4", "ControlOrMeta");
      await press("r", "1");
      expect(await named("r2c3")).toContain("maybe the 1 of row 2");
      expect(await page.locator(".note").textContent()).toBe("The 1 of row 2 is in one of these two cells.");
      await click("r4c3");
      await press("c", "1");
      await click("r1c4");
      await press("b", "3");
      expect(await named("r4c3")).toContain("maybe the 1 of column 3");
      expect(await named("r1c4")).toContain("maybe the 3 of the top right box");
    });
  });

  test("a settled digit takes the marks that it strikes with it, and undo brings them back", async () => {
    await visit(kettle, desktop, async ({ click, press, named }) => {
      await click("r2c2");
      await press("4", "3");
      await click("r2c1");
      await press("3", "Enter");
      expect(await named("r2c2")).toContain("mark 4,");
      await press("Control+z");
      expect(await named("r2c2")).toContain("marks 3 and 4");
    });
  });
});
