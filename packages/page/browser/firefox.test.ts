import { afterAll, describe, expect, test } from "vitest";
import { firefoxHere, foxVisit } from "./firefox.ts";
import { dataOf, kettle, kettleDigit } from "./puzzles.ts";
import { fileOf } from "./visit.ts";

const fox = await firefoxHere();
const name = fox ? `in ${await fox.version()}` : "in Firefox (skipped: there is none on the PATH that starts)";

describe.skipIf(!fox)(name, () => {
  const browser = fox!;
  afterAll(() => browser.close());

  test("a whole puzzle is solved by keyboard, with a reload in the middle", async () => {
    const faults = await foxVisit(
      browser,
      fileOf(dataOf(kettle)),
      async ({ page, press, helped, named, ...visitor }) => {
        const solveRow = async (row: number): Promise<void> => {
          for (let column = 1; column <= 4; column++) {
            if (row !== 4 || column !== 4) await press(String(kettleDigit(row, column)), "Enter");
            if (column < 4) await press("ArrowRight");
          }
          await press("Home", "ArrowDown");
        };
        await helped();
        await press("Tab");
        await solveRow(1);
        await solveRow(2);
        await visitor.shows(".kept", "kept on this device");
        await new Promise((done) => setTimeout(done, 500)); // it is kept a moment later
        await page.reload();
        await helped();
        await visitor.shows(".kept", "kept on this device");
        expect(await named("r2c4")).toMatch(/^row 2, column 4, 1/);
        await page.focus("[data-cell='r1c1']");
        await press("ArrowDown", "ArrowDown", "Control+z");
        expect(await named("r2c4")).toContain("mark 1");
        await press("Control+Shift+z");
        await solveRow(3);
        await solveRow(4);
        await visitor.shows("h2", "That was the last one.");
        expect(await visitor.announced()).toBe("Kettle is finished. Every digit is in its place.");
      },
    );
    expect(faults).toEqual([]);
  });

  test("a nudge comes in three grades, and why is answered with its reason drawn", async () => {
    const data = { ...dataOf(kettle), fingerprint: "asked in Firefox" };
    const faults = await foxVisit(browser, fileOf(data), async ({ page, press, helped, shows }) => {
      await helped();
      await press("Tab", "n");
      await shows(".grade dd", "Look at");
      await press("n", "n");
      await page.waitForSelector(".grade .line .so");
      expect(await page.$$(".drawing [data-layer='conclusion'] > *")).not.toEqual([]);
      await press("Escape", "2", "Enter", "ArrowRight", "w", "2");
      await shows(".help h2", "Why can’t this be a 2?");
      await shows(".help .line p", "so there’s no 2 here");
      expect((await page.$$(".drawing [data-layer='hatch'] > *")).length).toBeGreaterThan(0);
    });
    expect(faults).toEqual([]);
  });
});
