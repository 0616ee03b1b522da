import { expect, test } from "vitest";
import { kettle, mill } from "./puzzles.ts";
import { desktop, inBrowser, phone, type Visitor, visit } from "./visit.ts";

const heading = ({ page }: Visitor, name: string) => page.getByRole("heading", { name, exact: true }).waitFor();
const button = ({ page }: Visitor, name: string) => page.locator(".side").getByRole("button", { name, exact: true });
const settle = async ({ click, press }: Visitor, cell: string, digit: number): Promise<void> => {
  await click(cell);
  await press(String(digit), "Enter");
};
/** How many parts of that layer are drawn on the board. */
const drawn = ({ page }: Visitor, layer: string) => page.locator(`.drawing [data-layer="${layer}"] > *`).count();

inBrowser("help", () => {
  test("a check says how many are wrong, then where if asked", async () => {
    await visit(kettle, desktop, async (visitor) => {
      await visitor.helped();
      await settle(visitor, "r1c1", 2);
      await visitor.press("k");
      await heading(visitor, "The one digit you settled is right.");
      await settle(visitor, "r2c1", 2);
      await settle(visitor, "r2c3", 1);
      await visitor.press("k");
      await heading(visitor, "Two cells are not right yet.");
      const before = await drawn(visitor, "conclusion");
      await button(visitor, "Show me where").click();
      await visitor.page.getByText("They are crossed on the board.").waitFor();
      expect(await drawn(visitor, "conclusion")).toBeGreaterThan(before);
    });
  });

  test("nudges come in three grades, the last with its reason drawn, and follow the board", async () => {
    await visit(mill, desktop, async (visitor) => {
      await visitor.helped();
      await button(visitor, "A nudge").click();
      const where = visitor.page.locator(".grade").nth(0);
      const line = visitor.page.locator(".grade").nth(2);
      await where.getByText("Look at row 5 of the yard.").waitFor();
      expect(await drawn(visitor, "hatch")).toBe(0);
      await button(visitor, "Tell me more").click();
      await visitor.page.locator(".grade").nth(1).getByText("cage of 5").waitFor();
      expect(await drawn(visitor, "ring")).toBeGreaterThan(0);
      await button(visitor, "Tell me").click();
      expect(await line.locator(".so").count()).toBeGreaterThan(0);
      expect(await line.locator(".because").count()).toBeGreaterThan(0);
      await settle(visitor, "r5c9", 1);
      await settle(visitor, "r5c8", 4);
      await visitor.press("Escape", "n");
      await where.waitFor();
      expect(await where.textContent()).not.toContain("row 5 of the yard");
    });
  });

  test("why not: a block in sight first; the right digit is never given away", async () => {
    await visit(kettle, desktop, async (visitor) => {
      await visitor.helped();
      await settle(visitor, "r1c1", 2);
      await visitor.click("r2c2");
      await visitor.press("w", "2");
      await heading(visitor, "Why can’t this be a 2?");
      const answer = visitor.page.locator(".help .line p[aria-hidden]");
      await answer.getByText("This box has its 2").waitFor();
      expect(await drawn(visitor, "hatch")).toBeGreaterThan(0);
      await visitor.press("4");
      await answer.getByText("Nothing plain rules it out from here.").waitFor();
      expect(await visitor.page.evaluate("document.activeElement.textContent")).toBe("4");
    });
  });

  test("by touch, help comes up over the digits and goes again", async () => {
    await visit(kettle, phone, async (visitor) => {
      const { page, tap, strip, helped } = visitor;
      await helped();
      await tap("r2c2");
      await strip("Ask why");
      await page.locator(".ask-digit", { hasText: "1" }).tap();
      await heading(visitor, "Why can’t this be a 1?");
      expect(await page.locator(".strip").isVisible()).toBe(false);
      const board = (await page.locator(".board").boundingBox())!;
      const sheet = (await page.locator(".side").boundingBox())!;
      expect(board.y + board.height).toBeLessThanOrEqual(sheet.y + 1);
      await button(visitor, "Back to the board").tap();
      expect(await page.locator(".strip").isVisible()).toBe(true);
    });
  });

  test("the end is quiet: time if wanted, and the walkthrough to compare", async () => {
    await visit(kettle, desktop, async (visitor) => {
      const { page, press, helped } = visitor;
      await helped();
      await press("Tab");
      for (const row of ["2143", "3421", "1234", "431"]) {
        for (const digit of row) await press(digit, "Enter", "ArrowRight");
        await press("Home", "ArrowDown");
      }
      await heading(visitor, "That was the last one.");
      await button(visitor, "How long did it take?").click();
      await page.getByText(/^It took you \d+ seconds?\.$/).waitFor();
      await page.getByText("A way through it, to compare").click();
      expect(await page.locator(".walkthrough li").count()).toBeGreaterThan(3);
    });
  });
});
