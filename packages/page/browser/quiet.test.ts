import { readdirSync, readFileSync, statSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { dataOf, kettle } from "./puzzles.ts";
import { browser, desktop, fileOf, inBrowser, visit } from "./visit.ts";

inBrowser("nothing leaves the page", () => {
  test("it asks for nothing but itself, and breaches no policy, whatever is done", async () => {
    // `visit` fails on any request and on any word in the console; the policy's breaches are told there.
    await visit(kettle, desktop, async ({ page, press, click, helped }) => {
      await helped();
      await click("r2c2");
      await press("1", "Enter", "n", "n", "n", "Escape", "w", "3", "Escape", "k", "Control+z");
      await page.getByText("Settings").click();
      await page.getByText("dark", { exact: true }).click();
      expect(await page.evaluate("document.documentElement.dataset.theme")).toBe("dark");
      const policy = await page.locator("meta[http-equiv]").getAttribute("content");
      expect(policy).toMatch(/^default-src 'none'; script-src 'sha256-[^;]*'; style-src 'sha256-[^;]*';/);
      expect(policy).not.toContain("unsafe");
    });
  });

  test("what the policy forbids is refused, and told in the console", async () => {
    let fetched: unknown;
    const trying = visit(kettle, desktop, async ({ page }) => {
      fetched = await page.evaluate(() =>
        fetch("https://example.org/").then(
          () => "answered",
          () => "refused",
        ),
      );
    });
    await expect(trying).rejects.toThrow();
    expect(fetched).toBe("refused");
  });

  test("each of our puzzles is one file below 400 kB, fonts and all", () => {
    const folder = new URL("../../../examples/", import.meta.url);
    const sizes = readdirSync(folder)
      .filter((file) => file.endsWith(".puzzle.yaml"))
      .map((file) => ({
        file,
        bytes: statSync(fileURLToPath(fileOf(dataOf(readFileSync(new URL(file, folder), "utf8"))))).size,
      }));
    expect(sizes.length).toBeGreaterThan(5);
    expect(sizes.filter(({ bytes }) => bytes >= 400_000)).toEqual([]);
  });

  test("hostile words stay words", async () => {
    const hostile = `</script><script>window.hit = 1</script><img src=x onerror="window.hit = 2">&lt;b&gt;`;
    const data = dataOf(kettle);
    const puzzle = { ...data.puzzle, title: hostile };
    const setters = [{ name: hostile, link: "javascript:window.hit = 3" }];
    await visit({ ...data, puzzle, setters, notes: hostile, wording: hostile }, desktop, async ({ page }) => {
      expect(await page.getByRole("heading", { level: 1 }).textContent()).toBe(hostile);
      expect(await page.title()).toBe(hostile);
      expect(await page.locator(".by").textContent()).toBe(`by ${hostile}`);
      expect(await page.locator(".by a").count()).toBe(0);
      expect(await page.locator(".wording").textContent()).toContain(hostile);
      expect(await page.evaluate("window.hit")).toBeUndefined();
    });
  });
});

const served = (pages: Readonly<Record<string, string>>): Promise<Server> =>
  new Promise((resolve) => {
    const server = createServer(({ url = "" }, answer) => {
      const page = pages[url];
      answer.writeHead(page === undefined ? 404 : 200, { "content-type": "text/html; charset=utf-8" });
      answer.end(page);
    });
    server.listen(0, "127.0.0.1", () => resolve(server));
  });
const portOf = (server: Server): number => (server.address() as AddressInfo).port;

inBrowser("embedded in another site, in a sandbox", () => {
  const servers: Server[] = [];
  beforeAll(async () => {
    const page = readFileSync(fileURLToPath(fileOf(dataOf(kettle))), "utf8");
    const inner = await served({ "/try-it.html": page });
    const frame = `<iframe src="http://127.0.0.1:${portOf(inner)}/try-it.html" title="Kettle" width="900" height="700" sandbox="allow-scripts allow-downloads allow-modals"></iframe>`;
    const outer = await served({ "/": `<!doctype html><title>A site</title>${frame}` });
    servers.push(inner, outer);
  });
  afterAll(() => {
    for (const server of servers) server.close();
  });

  test("it works, keeps nothing and says so, and asks nobody anything", async () => {
    const context = await (await browser()).newContext(desktop);
    const page = await context.newPage();
    const asked: string[] = [];
    page.on("request", (request) => asked.push(request.url()));
    await page.goto(`http://127.0.0.1:${portOf(servers[1]!)}/`);
    const frame = page.frameLocator("iframe");
    await frame.locator(".page[data-helper='ready']").waitFor();
    await frame.locator("[data-cell='r1c1']").click();
    await page.keyboard.press("2");
    await page.keyboard.press("Enter");
    await frame.locator("[data-cell='r1c1'][aria-label*=', 2,']").waitFor({ state: "attached" });
    await page.keyboard.press("n");
    await frame.locator(".grade").first().waitFor();
    await frame.getByText("not kept here").waitFor({ state: "attached" });
    const others = asked.filter((url) => !/^(blob|data):/.test(url) && !/\/(try-it\.html|favicon\.ico)?$/.test(url));
    expect(others).toEqual([]);
    await context.close();
  });
});
