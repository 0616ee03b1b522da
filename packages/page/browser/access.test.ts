import { expect, test } from "vitest";
import { kettle, mill } from "./puzzles.ts";
import { desktop, inBrowser, phone, visit } from "./visit.ts";

inBrowser("for everyone", () => {
  test("targets on touch are 44 px high, and 320 px is wide enough", async () => {
    await visit(mill, { ...phone, viewport: { width: 320, height: 640 } }, async ({ page, strip, helped }) => {
      await helped();
      const small = () =>
        page.evaluate(() =>
          [...document.querySelectorAll<HTMLElement>("button, a, input, summary, label")]
            .map((element) => ({ element, box: element.getBoundingClientRect() }))
            .filter(({ element, box }) => box.width > 0 && !element.closest("label > *") && box.height < 43.9)
            .map(({ element, box }) => `${element.textContent || element.outerHTML} ${box.height}`),
        );
      const overflow = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(await small()).toEqual([]);
      expect(await overflow()).toBe(0);
      await strip("Ask why");
      expect(await small()).toEqual([]);
      expect(await overflow()).toBe(0);
      await page.getByRole("button", { name: "Back to the board" }).tap();
      await page.getByRole("button", { name: "Rules" }).tap();
      await page.getByText("Settings").tap();
      expect(await small()).toEqual([]);
      expect(await overflow()).toBe(0);
    });
  });

  test("400 % zoom loses nothing: all can be scrolled to, nothing sideways, nothing lies over anything", async () => {
    await visit(mill, { viewport: { width: 320, height: 200 } }, async ({ page, press, helped }) => {
      await helped();
      const overflow = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      const seen = async (name: string): Promise<void> => {
        const button = page.getByRole("button", { name, exact: true });
        await button.click(); // refuses where something else lies over it
        expect(await overflow(), name).toBe(0);
      };
      expect(await overflow()).toBe(0);
      await page.locator("[data-cell='r4c6']").click();
      for (const digit of ["1", "8"]) await page.locator(`.strip [data-action='digit-${digit}']`).click();
      for (const name of ["A nudge", "Tell me more", "Tell me", "Back to the board"]) await seen(name);
      for (const name of ["Ask why", "2"])
        await page.locator(".page").getByRole("button", { name, exact: true }).last().click();
      await page.locator(".help .line").waitFor();
      expect(await overflow()).toBe(0);
      await press("Escape");
      await seen("Rules");
      for (const text of ["Renban lines.", "Settings"]) {
        await page.getByText(text).scrollIntoViewIfNeeded();
        expect(await page.getByText(text).isVisible()).toBe(true);
      }
    });
  });

  test("letters of twice the size lose nothing, in any state", async () => {
    await visit(mill, phone, async ({ page, tap, helped }) => {
      await helped();
      await page.evaluate(() => document.documentElement.style.setProperty("font-size", "200%"));
      /** Elements whose words stick out of them or out of the screen. */
      const lost = () =>
        page.evaluate(() =>
          [...document.querySelectorAll<HTMLElement>(".page *")]
            .filter((element) => !element.closest(".frame, .heard, svg") && element.getBoundingClientRect().width > 0)
            .filter(
              (element) =>
                element.getBoundingClientRect().right > innerWidth + 1 || element.scrollWidth > element.clientWidth + 1,
            )
            .filter((element) => getComputedStyle(element).display !== "inline")
            .map(({ className, textContent }) => `${className}: ${textContent}`),
        );
      expect(await lost()).toEqual([]);
      await tap("r4c6");
      await page.locator(".strip [data-action='digit-3']").tap();
      await page.locator(".strip [data-action='nudge']").tap();
      for (const name of ["Tell me more", "Tell me"]) await page.getByRole("button", { name, exact: true }).tap();
      expect(await lost()).toEqual([]);
      await page.getByRole("button", { name: "Back to the board" }).tap();
      await page.getByRole("button", { name: "Rules" }).tap();
      expect(await lost()).toEqual([]);
    });
  });

  test("where little motion is wanted, nothing moves", async () => {
    await visit(kettle, desktop, async ({ page, press, helped }) => {
      await helped();
      await press("Tab", "2", "Enter", "n");
      await page.locator(".grade").first().waitFor();
      await press("n", "n");
      expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
    });
    await visit(kettle, { ...desktop, reducedMotion: "no-preference" }, async ({ page, press, helped }) => {
      await helped();
      await page.evaluate(() => {
        const { animate } = Element.prototype;
        Element.prototype.animate = function (...given) {
          document.body.dataset.moved = "yes";
          return animate.apply(this, given);
        };
      });
      await press("Tab", "2", "Enter");
      expect(await page.evaluate(() => document.body.dataset.moved)).toBe("yes");
    });
  });

  test("it prints as one sheet: the board as it stands and the rules, no buttons", async () => {
    await visit(mill, desktop, async ({ page, click, press, helped }) => {
      await helped();
      await click("r4c6");
      await press("3", "Enter");
      await page.emulateMedia({ media: "print" });
      for (const selector of [".strip", ".help", ".keep", ".how", ".note"])
        expect(await page.locator(selector).isVisible(), selector).toBe(false);
      expect(await page.locator(".rules").isVisible()).toBe(true);
      const pdf = await page.pdf({ format: "A4" });
      expect(pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    });
  });
});
