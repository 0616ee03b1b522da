import AxeBuilder from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { kettle, mill } from "./puzzles.ts";
import { desktop, inBrowser, phone, type Visitor, visit } from "./visit.ts";

type Scheme = "light" | "dark";
const schemes: readonly Scheme[] = ["light", "dark"];

/**
 * In the dark only colours differ. The drawing has no part in it: it is hidden from screen readers, and its contrasts are
 * held by the tokens' tests.
 */
const faultsOn = async (page: Page, scheme: Scheme): Promise<readonly string[]> => {
  const axe = new AxeBuilder({ page }).exclude(".drawing").setLegacyMode();
  const { violations } = await (scheme === "dark" ? axe.withRules("color-contrast") : axe).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(" | ")}`);
};

/** The page in one state after the other. */
const states: readonly (readonly [name: string, reach: (visitor: Visitor) => Promise<void>])[] = [
  [
    "marks, a settled digit and a nudge",
    async ({ press, page }) => {
      await press("Tab", "Shift+ArrowRight", "1", "2", "r", "4", "Escape", "ArrowDown", "3", "Enter", "n");
      await page.locator(".grade").first().waitFor();
      await press("n", "n");
    },
  ],
  [
    "why",
    async ({ press, page }) => {
      await press("Escape", "ArrowRight", "w", "3");
      await page.locator(".help .line").waitFor();
    },
  ],
  [
    "checked, and settings",
    async ({ press, page }) => {
      await press("Escape", "4", "Enter", "ArrowRight", "3", "Enter", "k");
      await page.getByText("Show me where").click();
      await page.getByText("Settings").click();
    },
  ],
  [
    "finished, with time and walkthrough",
    async ({ press, page }) => {
      await press("Escape", "Control+Home");
      for (const row of ["2143", "3421", "1234", "431"]) {
        for (const digit of row) await press("Backspace", digit, "Enter", "ArrowRight");
        await press("Home", "ArrowDown");
      }
      await page.getByText("How long did it take?").click();
      await page.locator(".walkthrough summary").click();
    },
  ],
];

inBrowser("axe", () => {
  test.each(schemes)("finds nothing in any state, %s", async (colorScheme) => {
    await visit(kettle, { ...desktop, colorScheme }, async (visitor) => {
      await visitor.helped();
      expect(await faultsOn(visitor.page, colorScheme)).toEqual([]);
      for (const [name, reach] of states) {
        await reach(visitor);
        expect(await faultsOn(visitor.page, colorScheme), name).toEqual([]);
      }
    });
  });

  test.each(schemes)("nor on a phone, %s", async (colorScheme) => {
    await visit(mill, { ...phone, colorScheme }, async ({ page, tap, strip, helped }) => {
      await helped();
      await tap("r4c6");
      await strip("3");
      expect(await faultsOn(page, colorScheme)).toEqual([]);
      await strip("A nudge");
      await page.locator(".grade").first().waitFor();
      expect(await faultsOn(page, colorScheme)).toEqual([]);
      await page.getByRole("button", { name: "Back to the board" }).tap();
      await strip("Ask why");
      await page.locator(".ask-digit", { hasText: "1" }).tap();
      await page.locator(".help .line").waitFor();
      expect(await faultsOn(page, colorScheme)).toEqual([]);
      await page.getByRole("button", { name: /^(Back to the board|Close)$/ }).tap();
      await strip("One grid");
      expect(await faultsOn(page, colorScheme)).toEqual([]);
      await page.getByRole("button", { name: "Rules" }).tap();
      expect(await faultsOn(page, colorScheme)).toEqual([]);
    });
  });
});
