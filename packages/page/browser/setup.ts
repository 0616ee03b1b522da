import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { TestProject } from "vitest/node";
import { noBrowser } from "../../../scripts/browser.mjs";
import { buildPage } from "../../../scripts/page.mjs";
import { launched } from "./launch.ts";

declare module "vitest" {
  interface ProvidedContext {
    /** Where the browser listens; empty where there is none. */
    readonly browser: string;
    /** Where pages are put to be opened. */
    readonly pages: string;
  }
}

/** Once for all browser tests: builds the page and starts a browser. */
export default async (project: TestProject): Promise<() => Promise<void>> => {
  const [server] = await Promise.all([launched(), buildPage()]);
  if (!server) console.log(noBrowser);
  const pages = mkdtempSync(join(tmpdir(), "solvewright-pages-"));
  project.provide("browser", server?.wsEndpoint() ?? "");
  project.provide("pages", pages);
  return async () => {
    await server?.close();
    rmSync(pages, { recursive: true });
  };
};
