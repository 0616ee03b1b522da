/** Pictures of the try-it page for docs/try-it.md, from the demo's pack: `node scripts/try-it.mjs`. */
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";
import { browsersHere } from "./browser.mjs";
import { root } from "./install.mjs";

const page = pathToFileURL(join(root, "docs/demo-pack/try-it.html")).href;
const folder = join(root, "docs/try-it");

const windows = [
  { name: "phone-light", viewport: { width: 390, height: 844 }, colorScheme: "light" },
  { name: "phone-dark", viewport: { width: 390, height: 844 }, colorScheme: "dark" },
  { name: "desktop-light", viewport: { width: 1280, height: 860 }, colorScheme: "light" },
  { name: "desktop-dark", viewport: { width: 1280, height: 860 }, colorScheme: "dark" },
];

/** A few digits settled, two marks, and the whole of a nudge. */
const play = async (tab) => {
  await tab.getByRole("gridcell").first().focus();
  await tab.keyboard.press("1");
  await tab.keyboard.press("2");
  await tab.keyboard.press("n");
  for (let grade = 0; grade < 2; grade++)
    await tab
      .getByRole("button", { name: /tell me/i })
      .click({ timeout: 5000 })
      .catch(() => {});
  await tab.waitForTimeout(800);
};

mkdirSync(folder, { recursive: true });
const browser = await chromium.launch({ executablePath: browsersHere()[0] });
for (const { name, ...window } of windows) {
  const tab = await browser.newPage(window);
  await tab.goto(page);
  await tab.waitForTimeout(1500);
  await play(tab);
  await tab.screenshot({ path: join(folder, `${name}.png`) });
  await tab.close();
}
await browser.close();
